"""Alive, ready and measured."""

from __future__ import annotations

import asyncio
import dataclasses
import itertools
import json
import time
from collections.abc import Mapping
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import Any

import httpx
import pytest
from litestar.testing import TestClient
from tests.api.asking import ask, problem

from kilisho.faults import Fault, RefusedError
from kilisho.packs import Rulebook, load
from kilisho.questions import Question, open_questions
from kilisho_api.app import assemble, create_app
from kilisho_api.health import SelfCheck, SharedCheck
from kilisho_api.openapi import contract
from kilisho_api.settings import Settings


def test_the_process_is_alive(client: httpx.Client) -> None:
    assert client.get("/health").json() == {"status": "live"}


def test_the_service_is_ready_and_says_over_which_rulebook(client: httpx.Client, rulebook: Rulebook) -> None:
    assert client.get("/ready").json() == {"status": "ready", "rulebook": dict(rulebook.identity)}


def test_an_example_that_fails_makes_it_unready(rulebook: Rulebook, questions: Mapping[str, Question]) -> None:
    def failing(_request: Any, _explain: bool) -> dict[str, Any]:
        raise RuntimeError

    broken = {**questions, "sizing": dataclasses.replace(questions["sizing"], answer=failing)}
    with TestClient(assemble(Settings(), rulebook, broken)) as client:
        assert "sizing" in problem(client.get("/ready"), 503, "not-ready")["detail"]
        assert client.get("/health").status_code == 200


def test_an_example_that_changes_makes_it_unready(
    rulebook: Rulebook, questions: Mapping[str, Question], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("kilisho_api.health.SECONDS_KEPT", 0.0)
    counter = itertools.count()
    drifting = {"sizing": dataclasses.replace(questions["sizing"], answer=lambda _request, _explain: {"value": next(counter)})}
    with TestClient(assemble(Settings(), rulebook, drifting)) as client:
        assert client.get("/ready").status_code == 200
        problem(client.get("/ready"), 503, "not-ready")


def test_requests_are_counted_and_timed_by_address(client: httpx.Client) -> None:
    labels = '{method="POST",operation="/v1/sizing",status="400"}'
    before, seconds = _figure(client, f"kilisho_requests_total{labels}"), 'kilisho_request_seconds_count{operation="/v1/sizing"}'
    timed = _figure(client, seconds)
    ask(client, "sizing", b"[")
    ask(client, "sizing", b"[")
    assert _figure(client, f"kilisho_requests_total{labels}") == before + 2
    assert _figure(client, seconds) == timed + 2


def test_whatever_a_scanner_asks_it_makes_no_new_series(client: httpx.Client) -> None:
    client.get("/some/made-up/address")
    client.request("PROPFIND", "/v1/substrates/cattle_dung")
    text = client.get("/metrics").text
    assert "made-up" not in text
    assert "PROPFIND" not in text
    assert "cattle_dung" not in text
    assert 'operation="unknown"' in text


def test_the_figures_are_in_the_format_that_is_scraped(client: httpx.Client) -> None:
    answer = client.get("/metrics")
    assert answer.headers["content-type"] == "text/plain; version=1.0.0; charset=utf-8"
    assert "# TYPE kilisho_request_seconds histogram" in answer.text


def _figure(client: httpx.Client, series: str) -> float:
    lines = client.get("/metrics").text.splitlines()
    return next((float(line.removeprefix(series)) for line in lines if line.startswith(f"{series} ")), 0.0)


@pytest.mark.parametrize(("slow", "times"), [(False, 3), (True, 1)])
def test_a_probe_asks_quick_questions_every_time_and_slow_ones_once(slow: bool, times: int) -> None:
    usual, asked = open_questions(load())["sizing"], list[int]()

    def answer(request: Any, explain: bool) -> dict[str, Any]:
        asked.append(1)
        return usual.answer(request, explain)

    check = SelfCheck({"sizing": dataclasses.replace(usual, answer=answer, slow=slow)})
    assert [check.faults() for _ in range(3)] == [[], [], []]
    assert len(asked) == times


class Counted(SelfCheck):
    """A self-check that takes a while, and tells how often it was made and how many ran together at most."""

    def __init__(self) -> None:
        super().__init__({})
        self.made, self.inside, self.most = 0, 0, 0

    def faults(self) -> list[str]:
        self.made, self.inside = self.made + 1, self.inside + 1
        self.most = max(self.most, self.inside)
        time.sleep(0.05)
        self.inside -= 1
        return [f"check {self.made}"]


def test_however_many_ask_there_is_one_self_check_and_all_hear_of_it() -> None:
    async def story() -> tuple[set[str], Counted]:
        counted = Counted()
        shared = SharedCheck(counted)
        told = await asyncio.gather(*(shared.faults() for _ in range(50)))
        return {name for names in [*told, await shared.faults()] for name in names}, counted

    told, counted = asyncio.run(story())
    assert (told, counted.made, counted.most) == ({"check 1"}, 1, 1)


def test_what_was_found_is_kept_for_a_while_and_then_worked_out_anew(monkeypatch: pytest.MonkeyPatch) -> None:
    async def story(kept: float, pause: float) -> list[str]:
        monkeypatch.setattr("kilisho_api.health.SECONDS_KEPT", kept)
        shared = SharedCheck(Counted())
        first = await shared.faults()
        await asyncio.sleep(pause)
        return [*first, *await shared.faults()]

    assert asyncio.run(story(60.0, 0.1)) == ["check 1", "check 1"]
    assert asyncio.run(story(0.1, 0.2)) == ["check 1", "check 2"]


def test_whoever_leaves_ends_the_check_for_nobody_else() -> None:
    async def story() -> tuple[list[str], int]:
        counted = Counted()
        shared = SharedCheck(counted)
        leaving, staying = (asyncio.create_task(shared.faults()) for _ in range(2))
        await asyncio.sleep(0.01)
        leaving.cancel()
        return await staying, counted.made

    assert asyncio.run(story()) == (["check 1"], 1)


def test_strangers_who_ask_all_the_time_leave_it_ready(client: httpx.Client) -> None:
    """Twelve connections that never pause, beside one that probes."""
    with ThreadPoolExecutor(13) as pool:
        strangers = [pool.submit(lambda: [client.get("/ready").status_code for _ in range(20)]) for _ in range(12)]
        probed = [client.get("/ready").status_code for _ in range(20)]
        assert {status for one in strangers for status in one.result()} == set(probed) == {200}


def refusing(_request: Any, _explain: bool) -> dict[str, Any]:
    raise RefusedError([Fault((), "invented", "nothing is right")])


def test_a_question_without_an_example_that_fits_is_neither_checked_nor_shown(
    rulebook: Rulebook, questions: Mapping[str, Question], caplog: pytest.LogCaptureFixture
) -> None:
    found = {"sizing": dataclasses.replace(questions["sizing"], answer=refusing), "gas-use": questions["gas-use"]}
    check = SelfCheck(found)
    assert [check.faults(), check.faults()] == [[], []]
    assert [record.getMessage() for record in caplog.records].count(
        "no example of sizing fits the rulebook; it is neither checked nor shown"
    ) == 1
    shown = json.loads(contract(rulebook, {**questions, **found}, Settings()))["paths"]
    assert "example" not in shown["/v1/sizing"]["post"]["requestBody"]["content"]["application/json"]
    answers = shown["/v1/sizing"]["post"]["responses"]["200"]["content"]
    assert len(answers) == 1 + len(questions["sizing"].representations)
    assert not any("example" in one for one in answers.values())
    assert shown["/v1/gas-use"]["post"]["requestBody"]["content"]["application/json"]["example"] == questions["gas-use"].example


def test_an_example_that_is_refused_later_makes_it_unready(questions: Mapping[str, Question]) -> None:
    usual, asked = questions["sizing"], itertools.count()

    def answer(request: Any, explain: bool) -> dict[str, Any]:
        return usual.answer(request, explain) if next(asked) == 0 else refusing(request, explain)

    check = SelfCheck({"sizing": dataclasses.replace(usual, answer=answer)})
    assert [check.faults(), check.faults()] == [[], ["sizing"]]


def test_a_pack_that_takes_out_what_the_examples_name_is_served(tmp_path: Path) -> None:
    """The packs of README: ids of an invented region that has neither the animal, the stove, the fuel nor the crop."""
    pack = tmp_path / "region.yaml"
    pack.write_text(
        "pack: {id: invented, version: 0.1.0, title: An invented region}\nanimals: {dairy_cow: null}\n"
        "appliances: {double_burner_stove: null}\nfuels: {firewood: null}\ncrops: {maize: null}\n"
    )
    with TestClient(create_app(Settings(packs=(str(pack),)))) as client:
        assert client.get("/ready").status_code == 200
        shown = client.get("/openapi.json")
        assert shown.status_code == 200
        asked = [one["post"]["requestBody"]["content"] for one in shown.json()["paths"].values() if "post" in one]
        assert all("example" in content["application/json"] for content in asked if "application/json" in content)
        example = shown.json()["paths"]["/v1/sizing"]["post"]["requestBody"]["content"]["application/json"]["example"]
        assert client.post("/v1/sizing", json=example).status_code == 200
