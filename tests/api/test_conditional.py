"""Entity tags and If-None-Match."""

from __future__ import annotations

import pytest

from kilisho_api.conditional import strong_tag, unchanged

TAG = strong_tag(b"body")


def test_a_tag_names_exactly_these_bytes() -> None:
    assert strong_tag(b"body") == TAG
    assert strong_tag(b"body ") != TAG
    assert TAG.startswith('"')
    assert TAG.endswith('"')


@pytest.mark.parametrize("header", ["*", " * ", TAG, f"W/{TAG}", f'"other", {TAG}', f'W/"other",W/{TAG}'])
def test_whoever_holds_it_need_not_get_it_again(header: str) -> None:
    assert unchanged(header, TAG)


@pytest.mark.parametrize("header", [None, "", '"other"', 'W/"other"', TAG.strip('"'), TAG[:-2] + '"', '"*"'])
def test_whoever_holds_something_else_gets_it(header: str | None) -> None:
    assert not unchanged(header, TAG)
