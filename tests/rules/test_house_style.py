"""The shape of the source, measured: short functions, short modules, everything typed and told, tests as long as the source."""

from __future__ import annotations

import ast
from collections.abc import Iterable, Iterator
from pathlib import Path
from statistics import median, quantiles

ROOT = Path(__file__).resolve().parents[2]
SOURCE = sorted(path for package in ("rules/kilisho", "api/kilisho_api") for path in (ROOT / package).rglob("*.py"))
MODULES = {path: ast.parse(path.read_text("utf-8")) for path in SOURCE}
MAY_PRINT = {"cli.py", "commands.py", "fleet_commands.py", "message_commands.py", "key_commands.py", "serving.py", "__main__.py"}
Function = ast.FunctionDef | ast.AsyncFunctionDef


def functions() -> Iterator[tuple[str, Function]]:
    """Every function with the place where it is."""
    for path, module in MODULES.items():
        for node in ast.walk(module):
            if isinstance(node, Function):
                yield f"{path.relative_to(ROOT)}:{node.lineno} {node.name}", node


def body_lines(function: Function) -> int:
    """Lines of the body without its docstring."""
    told = function.body[1:] if ast.get_docstring(function) else function.body
    return function.body[-1].end_lineno - told[0].lineno + 1 if told and function.body[-1].end_lineno else 0


def lines(paths: Iterable[Path]) -> list[int]:
    """Length of each file."""
    return [len(path.read_text("utf-8").splitlines()) for path in paths]


def public(body: list[ast.stmt]) -> Iterator[Function | ast.ClassDef]:
    """Public functions and classes of a module or class, to any depth of classes."""
    for node in body:
        if isinstance(node, Function | ast.ClassDef) and not node.name.startswith("_"):
            yield node
            yield from public(node.body if isinstance(node, ast.ClassDef) else [])


def test_functions_are_short() -> None:
    lengths = [body_lines(function) for _, function in functions()]
    assert median(lengths) <= 6
    assert quantiles(lengths, n=10)[-1] <= 20


def test_modules_are_short() -> None:
    assert median(lines(SOURCE)) <= 120


def test_every_function_is_annotated() -> None:
    bare = []
    for place, function in functions():
        taken = function.args
        parameters = [*taken.posonlyargs, *taken.args, *taken.kwonlyargs, *filter(None, (taken.vararg, taken.kwarg))]
        untyped = [one.arg for one in parameters if one.annotation is None and one.arg not in ("self", "cls")]
        bare += [f"{place}: {', '.join(untyped) or 'return'}"] if untyped or function.returns is None else []
    assert bare == []


def test_everything_public_says_what_it_is() -> None:
    silent = [f"{path.relative_to(ROOT)}" for path, module in MODULES.items() if module.body and not ast.get_docstring(module)]
    for path, module in MODULES.items():
        silent += [f"{path.relative_to(ROOT)}:{node.lineno} {node.name}" for node in public(module.body) if not ast.get_docstring(node)]
    assert silent == []


def test_only_commands_print() -> None:
    printing = {
        str(path.relative_to(ROOT))
        for path, module in MODULES.items()
        for node in ast.walk(module)
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "print" and path.name not in MAY_PRINT
    }
    assert printing == set()


def test_tests_are_at_least_as_long_as_the_source() -> None:
    assert sum(lines((ROOT / "tests").rglob("*.py"))) >= sum(lines(SOURCE))
