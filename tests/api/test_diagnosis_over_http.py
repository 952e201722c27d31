"""A diagnosis over HTTP: whatever it names by id can be looked up, and its symptoms are the catalogue's."""

from __future__ import annotations

import httpx
from tests.api.asking import ask, faults


def test_every_id_of_an_answer_has_a_page(client: httpx.Client) -> None:
    body = {"symptoms": ["gas_fell_slowly", "flame_yellow"], "readings": {"ph": 6.4}}
    answer = ask(client, "diagnosis", body).json()
    named = {f"causes/{one['cause']}" for one in (*answer["causes"], *answer["other_causes"])}
    named |= {f"tests/{one['test']}" for one in (*answer["tests"], *(cause["test"] for cause in answer["causes"]))}
    named |= {f"cautions/{one['id']}" for one in answer["cautions"]} | {f"symptoms/{name}" for name in body["symptoms"]}
    named |= {f"{'symptoms' if one['kind'] == 'symptom' else 'checks'}/{one['alarm']}" for one in answer["alarms"]}
    assert len(named) > 40
    assert [path for path in sorted(named) if client.get(f"/v1/{path}").status_code != 200] == []


def test_every_symptom_of_the_catalogue_may_be_asked(client: httpx.Client) -> None:
    for item in client.get("/v1/symptoms").json()["items"]:
        answer = ask(client, "diagnosis", {"symptoms": [item["id"]]})
        assert answer.status_code == 200, item["id"]
        assert bool(answer.json()["alarms"]) is item["alarm"], item["id"]


def test_a_misspelt_symptom_is_answered_with_the_nearest(client: httpx.Client) -> None:
    found = faults(ask(client, "diagnosis", {"symptoms": ["flame_yelow"]}))
    assert found["/symptoms/0"]["code"] == "unknown_id"
    assert "flame_yellow" in found["/symptoms/0"]["nearest"]
