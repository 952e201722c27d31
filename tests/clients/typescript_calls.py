"""Writes a TypeScript program that asks every operation of the contract through a client that the contract types.

The body of each call is its example as a literal, so the compiler holds the examples against the types; each required member of the answer
is then read by name.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator
from typing import Any

from tests.clients.contract import JSON, Operation, counts

IMPORTS = 'import { asked, client, counts, given, holds, reads, refuses, structured } from "./asking.js";'


def program(operations: Iterable[Operation]) -> str:
    """The text of ``calls.ts``; run, it prints the operations and media types that were answered."""
    calls = "\n".join(line for operation in operations for line in _calls(operation))
    return f"{IMPORTS}\n\n{calls}\nconsole.log(JSON.stringify(asked));\n"


def _calls(operation: Operation) -> Iterator[str]:
    for media_type in operation.content:
        yield from _call(operation, media_type)
    if operation.body is not None:
        yield from _refused(operation)


def _call(operation: Operation, media_type: str) -> Iterator[str]:
    name = json.dumps(operation.name)
    text = {} if media_type == JSON else {"headers": {"Accept": media_type}, "parseAs": "text"}
    yield "{"
    yield f"  const {{ data, error, response }} = await client.{_asked(operation, text)};"
    given = f"given({name}, data, error, response)"
    yield f"  const answer = {f'structured({given})' if media_type == JSON else given};"
    yield from (f"  {line}" for line in (_members(operation, name) if media_type == JSON else [f"reads({name}, answer as string);"]))
    yield "}"


def _asked(operation: Operation, more: dict[str, Any]) -> str:
    parameters = {"params": {"path": operation.in_path}} if operation.in_path else {}
    body = {} if operation.body is None else {"body": operation.body}
    options = json.dumps({**parameters, **body, **more})
    return f"{operation.method.upper()}({json.dumps(operation.path)}, {options})"


def _members(operation: Operation, name: str) -> Iterator[str]:
    expected = operation.expected()
    if expected is None:
        yield f"counts({name}, answer.items, {counts()[operation.path.rsplit('/', 1)[1]]});"
    for member in expected or ():
        yield f"holds({name}, {json.dumps(member)}, answer.{member});"


def _refused(operation: Operation) -> Iterator[str]:
    yield "{"
    yield f"  const {{ error, response }} = await client.POST({json.dumps(operation.path)}, {{"
    yield "    // @ts-expect-error A request is closed: the compiler refuses this member, and so does the service."
    yield f"    body: {json.dumps({**operation.body, 'no_such_member': 1})},"
    yield "  });"
    yield f"  refuses({json.dumps(operation.name)}, error, response);"
    yield "}"
