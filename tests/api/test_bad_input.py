"""Whatever is sent, the answer is a clear refusal with pointers: never a failure, never silence, never a slow one."""

from __future__ import annotations

import copy
import json
import socket
import time
from collections.abc import Iterator, Mapping
from typing import Any

import httpx
import pytest
from tests.api.asking import JSON_BODY, OPERATIONS, ask, faults, problem
from tests.api.running import Server

from kilisho.questions import Question

MANY = 20_000
SECONDS_FOR_A_REFUSAL = 3.0

BROKEN = {
    "empty": b"",
    "blank": b"  \n",
    "cut off": b'{"digester": {"total_volume": 12',
    "two documents": b"{} {}",
    "single quotes": b"{'name': 'x'}",
    "trailing comma": b'{"feed": [],}',
    "comment": b"{} // nothing",
    "NaN": b'{"digester": {"total_volume": NaN}}',
    "Infinity": b'{"digester": {"total_volume": Infinity}}',
    "minus Infinity": b'{"digester": {"total_volume": -Infinity}}',
    "not UTF-8": b'{"name": "\xff\xfe"}',
    "UTF-16": '{"name": "x"}'.encode("utf-16"),
    "byte order mark": b"\xef\xbb\xbf{}",
    "lone surrogate": b'{"name": "\\ud800"}',
    "raw control character": b'{"name": "a\x00b"}',
    "key twice": b'{"name": "a", "name": "b"}',
    "key twice, deep": b'{"digester": {"total_volume": {"value": 1, "value": 2, "unit": "m3"}}}',
    "deep lists": b"[" * 10_000 + b"]" * 10_000,
    "deep objects": b'{"a":' * 10_000 + b"1" + b"}" * 10_000,
    "endless number": b'{"digester": {"total_volume": ' + b"9" * 10_000 + b"}}",
}
NOT_OBJECTS = (b"null", b"true", b"3", b'"text"', b"[]", b"[{}]")
WRONG_VALUES = (None, True, False, "", "12", "twelve", [], {}, [1], {"value": 1}, {"unit": "m3"}, {"value": "1", "unit": "m3"}, 10**400)
OUT_OF_RANGE = ("-1", "0", "-0.0", "1e308", "-1e308", "1e400", "-1e400", "5e-324", "1" + "0" * 60)


# Slow questions are asked for as little as shows how they read their bodies.
LIGHT: dict[str, dict[str, Any]] = {"gas-forecast": {"days": 30, "deviations": []}, "farm-plan": {"with_forecast": False}}
SPARED = 5


def light(question: Question) -> Any:
    """The question's example, made quick where it is slow."""
    return {**question.example, **LIGHT.get(question.name, {})}


def leaves(question: Question) -> list[tuple[str | int, ...]]:
    """Places of the light example; of a question that stays slow every fifth, since each costs a second."""
    found = list(_leaves(light(question)))
    return found[:: SPARED if question.slow and question.name not in LIGHT else 1]


@pytest.fixture(params=OPERATIONS)
def question(request: pytest.FixtureRequest, questions: Mapping[str, Question]) -> Question:
    return questions[request.param]


@pytest.mark.parametrize("body", BROKEN.values(), ids=BROKEN)
def test_broken_json_is_told_with_its_place(client: httpx.Client, body: bytes) -> None:
    answer = ask(client, "first-charge", body)
    told = problem(answer, 400, "malformed-json")
    assert "line" in told["detail"]
    assert "errors" not in told


def test_a_doubled_member_is_not_repeated_in_the_answer(client: httpx.Client) -> None:
    told = problem(ask(client, "sizing", b'{"secret-of-mine": 1, "secret-of-mine": 2}'), 400, "malformed-json")
    assert told["detail"] == "The body names a member twice (line 1, column 40)."


@pytest.mark.parametrize("body", NOT_OBJECTS)
def test_a_body_that_is_no_object_points_at_the_whole(client: httpx.Client, question: Question, body: bytes) -> None:
    assert set(faults(ask(client, question.name, body))) == {""}


def test_the_examples_are_answered(client: httpx.Client, question: Question) -> None:
    answer = ask(client, question.name, question.example)
    assert answer.status_code == 200, answer.text
    assert {"assumptions", "findings", "cautions", "rulebook"} <= answer.json().keys()


def _leaves(value: Any, path: tuple[str | int, ...] = ()) -> Iterator[tuple[str | int, ...]]:
    inner = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    yield path
    for key, part in inner:
        yield from _leaves(part, (*path, key))


def _replaced(document: Any, path: tuple[str | int, ...], value: Any) -> Any:
    out = copy.deepcopy(document)
    place = out
    for key in path[:-1]:
        place = place[key]
    place[path[-1]] = value
    return out


def _pointer(path: tuple[str | int, ...]) -> str:
    return "".join(f"/{part}" for part in path)


def _related(pointer: str, place: str) -> bool:
    """A fault may lie at the changed value, inside it, or at the member that holds it."""
    return pointer.startswith(place) or place.startswith(pointer)


def test_every_value_of_the_example_may_be_wrong(client: httpx.Client, question: Question) -> None:
    """Each value replaced by each wrong one: answered if it happens to fit, else refused with a pointer to that place."""
    refused = 0
    example = light(question)
    for path in leaves(question):
        for wrong in WRONG_VALUES if path else ():
            answer = ask(client, question.name, json.dumps(_replaced(example, path, wrong)).encode())
            if answer.status_code == 200:
                continue
            refused += 1
            assert any(_related(pointer, _pointer(path)) for pointer in faults(answer)), (path, wrong, answer.text)
    assert refused > len(WRONG_VALUES)


def test_every_number_of_the_example_may_be_extreme(client: httpx.Client, question: Question) -> None:
    example = light(question)
    numbers = [path for path in leaves(question) if isinstance(_at(example, path), int | float)]
    for path in numbers:
        for text in OUT_OF_RANGE:
            body = json.dumps(_replaced(example, path, "NUMBER")).replace('"NUMBER"', text).encode()
            answer = ask(client, question.name, body)
            assert answer.status_code in (200, 422), (path, text, answer.text)
            if text in ("1e400", "-1e400", "1e308", "-1e308"):
                assert any(_related(pointer, _pointer(path)) for pointer in faults(answer)), (path, text, answer.text)


def _at(document: Any, path: tuple[str | int, ...]) -> Any:
    for key in path:
        document = document[key]
    return document


def test_every_member_may_be_missing(client: httpx.Client, question: Question) -> None:
    for path in leaves(question):
        if path and isinstance(path[-1], str):
            smaller = copy.deepcopy(light(question))
            del _at(smaller, path[:-1])[path[-1]]
            assert ask(client, question.name, smaller).status_code in (200, 422)


def test_an_empty_object_is_answered_or_told_what_is_missing(client: httpx.Client, question: Question) -> None:
    answer = ask(client, question.name, {})
    assert answer.status_code == 200 or faults(answer)


def test_an_unknown_member_is_refused_with_names_close_to_it(client: httpx.Client) -> None:
    body = {"digester": {"total_volme": 12, "structure": "fixed_dome"}, "feed": [{"substrate": "cattle_dung"}]}
    told = faults(ask(client, "first-charge", body))
    assert told["/digester/total_volme"]["code"] == "extra_forbidden"
    assert "total_volume" in told["/digester/total_volme"]["nearest"]


def test_a_pointer_escapes_what_it_must(client: httpx.Client) -> None:
    assert {"/a~1b~0c"} <= set(faults(ask(client, "sizing", {"a/b~c": 1})))


def test_unknown_units_and_ids_are_answered_with_the_nearest(client: httpx.Client, questions: Mapping[str, Question]) -> None:
    body = copy.deepcopy(questions["first-charge"].example)
    body["digester"] = {"structure": "fixed_domme", "total_volume": {"value": 12, "unit": "M3"}}
    body["feed"] = [{"substrate": "catle_dung"}]
    told = faults(ask(client, "first-charge", body))
    assert "m3" in told["/digester/total_volume/unit"]["nearest"]
    body["digester"]["total_volume"]["unit"] = "m3"
    told = faults(ask(client, "first-charge", body))
    assert "cattle_dung" in told["/feed/0/substrate"]["nearest"]
    assert "fixed_dome" in told["/digester/structure"]["nearest"]


@pytest.mark.parametrize(
    "day", ["2027-02-30", "2027-13-01", "27-01-01", "2027-1-1", "1900-01-01", "9999-12-31", "tomorrow", "2027-02-03T00:00", 20270203]
)
def test_impossible_dates(client: httpx.Client, questions: Mapping[str, Question], day: object) -> None:
    body = questions["first-charge"].example | {"digester_ready_on": day}
    assert faults(ask(client, "first-charge", body))["/digester_ready_on"]["code"] == "date_expected"


def test_a_digester_that_is_ready_before_collection_starts(client: httpx.Client, questions: Mapping[str, Question]) -> None:
    body = questions["first-charge"].example | {"digester_ready_on": "2027-01-01", "stockpile": {"starts_on": "2027-03-01"}}
    assert "dates_disordered" in {error["code"] for error in faults(ask(client, "first-charge", body)).values()}


def test_all_faults_come_at_once(client: httpx.Client) -> None:
    body = {"digester": {"total_volume": -1, "structure": 7}, "feed": [{"substrate": "x", "total_solids": 3}], "surprise": 1}
    told = faults(ask(client, "first-charge", body))
    assert {"/digester/total_volume", "/digester/structure", "/feed/0/total_solids", "/surprise"} <= told.keys()


def test_nothing_of_the_request_or_of_the_service_comes_back(client: httpx.Client) -> None:
    secret = "swordfish-7719"
    body = {"name": [secret], "digester": {"total_volume": secret, "structure": secret}, "feed": secret}
    text = ask(client, "first-charge", body).text
    assert secret not in text
    assert "Traceback" not in text
    assert ".py" not in text


def test_many_unknown_members_are_refused_soon(client: httpx.Client) -> None:
    body = {f"unknown_member_{i}": i for i in range(MANY)}
    begun = time.perf_counter()
    told = problem(ask(client, "first-charge", body), 422, "invalid-request")
    assert time.perf_counter() - begun < SECONDS_FOR_A_REFUSAL
    assert len(told["errors"]) == 100
    assert told["detail"].endswith("The first 100 are listed.")


def test_many_unknown_ids_and_units_are_refused_soon(client: httpx.Client) -> None:
    herd = [{"animal": "a" * 64, "count": 1, "live_weight": {"value": 1, "unit": "k" * 100}}] * 3_500
    begun = time.perf_counter()
    assert faults(ask(client, "sizing", {"herd": herd}))
    assert time.perf_counter() - begun < SECONDS_FOR_A_REFUSAL


def test_a_large_body_is_refused_before_it_is_sent(client: httpx.Client, server: Server) -> None:
    head = b"POST /v1/sizing HTTP/1.1\r\nhost: x\r\ncontent-type: application/json\r\ncontent-length: 10000000000\r\n\r\n"
    assert _status_line(server, head) == b"HTTP/1.1 413"


def test_ten_megabytes_are_refused(client: httpx.Client) -> None:
    try:
        answer = ask(client, "sizing", b" " * 10_000_000)
    except httpx.TransportError:
        pytest.fail("the connection broke before the refusal could be read")
    problem(answer, 413, "too-large")


def test_a_chunked_body_without_a_length_is_counted(client: httpx.Client) -> None:
    answer = client.post("/v1/sizing", content=(b" " * 100_000 for _ in range(100)), headers=JSON_BODY)
    problem(answer, 413, "too-large")


def test_a_body_longer_than_it_says_does_not_get_through(server: Server) -> None:
    head = b"POST /v1/sizing HTTP/1.1\r\nhost: x\r\ncontent-type: application/json\r\ncontent-length: 2\r\n\r\n"
    assert _status_line(server, head + b"{}" + b" " * 2_000_000) in (b"HTTP/1.1 400", b"HTTP/1.1 422")


def test_a_body_shorter_than_it_says_is_not_answered(server: Server, client: httpx.Client) -> None:
    with socket.create_connection(("127.0.0.1", server.port), timeout=5) as connection:
        connection.sendall(b"POST /v1/sizing HTTP/1.1\r\nhost: x\r\ncontent-type: application/json\r\ncontent-length: 200\r\n\r\n{}")
        connection.shutdown(socket.SHUT_WR)
        assert connection.recv(100) == b""
    assert client.get("/health").status_code == 200


def _status_line(server: Server, request: bytes) -> bytes:
    with socket.create_connection(("127.0.0.1", server.port), timeout=10) as connection:
        connection.sendall(request)
        return connection.recv(1_000)[:12]
