"""The longest that a request is worked on: given up with 504 by itself, and the lane is free for the next."""

from __future__ import annotations

import time
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import anyio
import httpx
import pytest
from tests.api.asking import ask, problem
from tests.api.running import serving

from kilisho.deadline import keep_to_time
from kilisho.packs import Rulebook
from kilisho.questions import Question
from kilisho_api.openapi.document import document
from kilisho_api.problems import ProblemError
from kilisho_api.settings import Settings
from kilisho_api.slow import SlowLane


class _Request:
    """A caller that stays."""

    async def receive(self) -> dict[str, Any]:
        await anyio.sleep_forever()
        return {}


REQUEST: Any = _Request()


def endless() -> None:
    while True:
        time.sleep(0.001)
        keep_to_time()


def test_work_that_takes_too_long_is_given_up_and_the_next_is_done() -> None:
    async def story() -> tuple[str, str, int]:
        lane = SlowLane(1, 0, 0.05)
        with pytest.raises(ProblemError) as given_up:
            await lane.run(endless, REQUEST)
        return given_up.value.kind.slug, await lane.run(lambda: "next", REQUEST), lane._inside

    assert anyio.run(story) == ("took-too-long", "next", 0)


def test_the_time_of_a_request_begins_with_its_turn() -> None:
    """Who waits behind others loses nothing by it."""

    async def story() -> list[str]:
        lane, done = SlowLane(1, 3, 0.5), list[str]()

        async def send(number: int) -> None:
            done.append(await lane.run(lambda: time.sleep(0.2) or keep_to_time() or str(number), REQUEST))

        async with anyio.create_task_group() as tasks:
            for number in range(4):
                tasks.start_soon(send, number)
        return sorted(done)

    assert anyio.run(story) == ["0", "1", "2", "3"]


def test_a_lane_without_a_limit_lets_work_take_its_time() -> None:
    async def story() -> str:
        return await SlowLane(1, 0).run(lambda: keep_to_time() or "done", REQUEST)

    assert anyio.run(story) == "done"


def test_the_longest_forecast_is_given_up_after_the_time_that_is_set(tmp_path: Path, questions: Mapping[str, Question]) -> None:
    """Ten years of several substrates take far more than a second of any processor."""
    example = questions["gas-forecast"].example
    feeds = ("cattle_dung", "pig_manure", "layer_droppings", "maize_stover", "kitchen_waste", "goat_droppings", "buffalo_dung")
    plans = [{**plan, "feed": [{"substrate": name, "mass": 15} for name in feeds]} for plan in example["maintenance_feed"]]
    body = {**example, "days": 3_660, "deviations": [], "maintenance_feed": plans}
    with (
        serving(tmp_path / "log", KILISHO_LONGEST_ANSWER="1", KILISHO_LONGEST_FORECAST="3660", KILISHO_SLOW_WAITING="0") as server,
        httpx.Client(base_url=server.url, timeout=60) as client,
    ):
        begun = time.perf_counter()
        told = problem(ask(client, "gas-forecast", body), 504, "took-too-long")
        assert time.perf_counter() - begun < 20  # the clock of a busy machine; alone it is 1.1
        assert "errors" not in told
        # The thread's turn has ended: with no room to wait, the next would otherwise be told 503.
        assert ask(client, "gas-forecast", {**example, "days": 30, "deviations": []}).status_code == 200
    assert "Traceback" not in (tmp_path / "log").read_text()


def test_the_contract_tells_the_limit(rulebook: Rulebook, questions: Mapping[str, Question]) -> None:
    made = document(rulebook, questions, Settings(longest_answer=7))
    assert "longer than 7 s is given up with 504" in made["info"]["description"]
    told = {path.removeprefix("/v1/") for path, item in made["paths"].items() if "504" in item.get("post", {}).get("responses", {})}
    assert told == {"installations/validate-table"} | {name for name, question in questions.items() if question.slow}
