"""What the service is measured against: the same framework and server, which read the same body and send as many bytes back.

``/model/...`` is the framework's ordinary way, a pydantic model in and one out; ``/bytes/...`` only copies bytes. Neither
works anything out, so what the service takes beyond them is its own.
"""

from __future__ import annotations

import argparse
from collections.abc import Iterator
from typing import Any

import uvicorn
from litestar import Litestar, Request, Response, post
from litestar.handlers import HTTPRouteHandler
from pydantic import BaseModel
from tests.load.bodies import loads, operation

from kilisho import packs
from kilisho.questions import Question, open_questions
from kilisho_api import server
from kilisho_api.encoding import encode
from kilisho_api.settings import Settings


def application() -> Litestar:
    """Both echoes of every question that has an example."""
    questions, requests = open_questions(packs.load()), loads()
    handlers = [handler for name, body in requests.items() for handler in _echoes(name, questions[operation(name)], body)]
    return Litestar(route_handlers=handlers, openapi_config=None, logging_config=None)


def _echoes(name: str, question: Question, body: bytes) -> Iterator[HTTPRouteHandler]:
    answer = question.ask(body)
    yield _model_echo(name, question, question.response.model_validate(answer))
    yield _bytes_echo(name, encode(answer))


def _model_echo(name: str, question: Question, answer: Any) -> HTTPRouteHandler:
    async def echo(data: Any) -> Any:
        return answer

    echo.__annotations__ = {"data": _in_context(question), "return": question.response}
    return post(f"/model/{name}", status_code=200)(echo)


def _in_context(question: Question) -> type[BaseModel]:
    """The request's model, validated with the rulebook's ids as the service does; the framework has no place to hand them over."""

    # The base class is known only here, which the type checker cannot follow.
    class InContext(question.request):  # type: ignore[name-defined, misc]
        @classmethod
        def model_validate(cls, obj: Any, **options: Any) -> Any:
            return super().model_validate(obj, **options | {"context": question.ids})

    return InContext


def _bytes_echo(name: str, answer: bytes) -> HTTPRouteHandler:
    @post(f"/bytes/{name}", status_code=200)
    async def echo(request: Request[Any, Any, Any]) -> Response[bytes]:
        await request.body()
        return Response(answer, media_type="application/json")

    return echo


def main() -> None:
    """Serve the echoes with the options that the service itself is served with."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--port", type=int, required=True)
    settings = Settings(port=parser.parse_args().port, log_level="warning")
    uvicorn.run(application(), **server.options(settings))


if __name__ == "__main__":
    main()
