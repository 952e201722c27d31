"""Mutation testing: ``python -m tests.mutation.run [MODULE ...]`` changes the source in small ways and counts what tests notice.

mutmut makes the mutants and runs, for each, those tests of ``targets.yaml`` that reach the changed function. At most ``most`` mutants of a
module are drawn, by a fixed seed. Mutants listed there as equivalent cannot be noticed by any test; the score leaves them out. All work is
done in a temporary folder. Without arguments all modules are tried and the table is told at the end; ``--survivors`` shows what lived.
"""

from __future__ import annotations

import argparse
import contextlib
import difflib
import json
import os
import random
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import libcst as cst
import yaml
from mutmut.mutation.file_mutation import MutatedFile, mutate_file_contents
from mutmut.stats import status_by_exit_code

ROOT = Path(__file__).resolve().parents[2]
TARGETS = Path(__file__).with_name("targets.yaml")
# mutmut takes what lies in src/ as importable, so the packages of rules/ and api/ go there.
PACKAGES = {"kilisho": "rules/kilisho", "kilisho_api": "api/kilisho_api"}
COPIED = ("tests", "openapi", "docker")
NOTICED = frozenset({"killed", "timeout", "segfault"})


@dataclass(frozen=True)
class Group:
    """Modules that are tried in one run, the tests that are to notice their mutants, and how many of a module to try at most."""

    modules: tuple[str, ...]
    tests: tuple[str, ...]
    most: int


@dataclass(frozen=True)
class Score:
    """How the mutants of one module ended."""

    module: str
    killed: int
    survived: int
    equivalent: int
    of: int

    @property
    def share(self) -> float:
        """Mutants noticed among those that could be [1]; 1 where there are none."""
        return self.killed / (self.killed + self.survived) if self.killed + self.survived else 1.0

    def row(self) -> str:
        """A row of the Markdown table."""
        drawn = self.killed + self.survived + self.equivalent
        return f"| {self.module} | {self.killed} | {self.survived} | {self.equivalent} | {drawn} of {self.of} | {self.share:.0%} |"


def main(arguments: Sequence[str]) -> int:
    """Try the modules named, or all; tells the table and returns 1 where the whole score is below the least of ``targets.yaml``."""
    asked = _parser().parse_args(arguments)
    settings = yaml.safe_load(TARGETS.read_text("utf-8"))
    scores: list[Score] = []
    for group in groups(settings["groups"], asked.modules):
        found = tried(group, Drawing(asked.most or group.most, settings["seed"]), settings["equivalent"], asked.survivors)
        print(*(score.row() for score in found), sep="\n", flush=True)
        scores += found
    total = Score("all", *(sum(getattr(score, name) for score in scores) for name in ("killed", "survived", "equivalent", "of")))
    print(total.row())
    return int(total.share < settings["least_score"])


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(prog="python -m tests.mutation.run")
    parser.add_argument("modules", nargs="*", help="such as kilisho.formulas.gas; all without")
    parser.add_argument("--most", type=int, help="mutants of a module at most")
    parser.add_argument("--survivors", action="store_true", help="show each mutant that no test noticed")
    return parser


def groups(told: Sequence[Mapping[str, Any]], wanted: Sequence[str]) -> Iterator[Group]:
    """The groups of ``targets.yaml``, with the wanted modules alone where any are named."""
    for one in told:
        if modules := tuple(module for module in one["modules"] if not wanted or module in wanted):
            yield Group(modules, tuple(one["tests"]), one["most"])


def tried(group: Group, drawing: Drawing, equivalent: Mapping[str, Mapping[str, str]], show: bool) -> list[Score]:
    """Try what is drawn of the mutants of each module; ``equivalent`` holds by module the changes, ``function: new line``, and reasons."""
    with tempfile.TemporaryDirectory(prefix="mutants-") as folder, contextlib.chdir(folder):
        _lay_out(Path(folder), group)
        every = {module: mutants_of(module) for module in group.modules}
        _confirm(every, equivalent)
        drawn = {module: drawing.of(module, mutants) for module, mutants in every.items()}
        tested = [mutant for module, mutants in drawn.items() for mutant in mutants if mutant.key not in equivalent.get(module, {})]
        ends = _run(tested)
    lived = {mutant for mutant in tested if ends[mutant.name] not in NOTICED}
    if show:
        print(
            *(f"{mutant.name}: {ends[mutant.name]}\n  - {mutant.before}\n  + {mutant.after}" for mutant in tested if mutant in lived),
            sep="\n",
        )
    return [_score(module, mutants, len(every[module]), tested, lived) for module, mutants in drawn.items()]


def _confirm(every: Mapping[str, Sequence[Mutant]], equivalent: Mapping[str, Mapping[str, str]]) -> None:
    """Raises ValueError where a change is listed as equivalent that mutmut does not make, so that none outlives its code."""
    for module, mutants in every.items():
        if stale := equivalent.get(module, {}).keys() - {mutant.key for mutant in mutants}:
            raise ValueError(f"{TARGETS.name}, {module}: no such mutant: {stale}")


def _score(module: str, drawn: Sequence[Mutant], of: int, tested: Sequence[Mutant], lived: Collection[Mutant]) -> Score:
    own = [mutant for mutant in drawn if mutant in tested]
    survived = sum(mutant in lived for mutant in own)
    return Score(module, len(own) - survived, survived, len(drawn) - len(own), of)


@dataclass(frozen=True)
class Mutant:
    """A change of one function: the mutant's full name, the function, what is taken out and what is put in."""

    name: str
    function: str
    before: str
    after: str

    @property
    def key(self) -> str:
        """How ``targets.yaml`` names the change."""
        return f"{self.function}: {self.after}"


@dataclass(frozen=True)
class Drawing:
    """How many mutants of a module are drawn at most, and from which seed."""

    most: int
    seed: int

    def of(self, module: str, mutants: Sequence[Mutant]) -> list[Mutant]:
        """The mutants drawn of all those of a module, by name."""
        chosen = random.Random(f"{self.seed} {module}").sample(mutants, min(self.most, len(mutants)))
        return sorted(chosen, key=lambda mutant: mutant.name)


def mutants_of(module: str) -> list[Mutant]:
    """All mutants of a module that lies in the current folder."""
    mutated = mutate_file_contents(path_of(module), Path(path_of(module)).read_text("utf-8"))
    return [_mutant(module, mutated, name) for name in mutated.mutant_names]


def _mutant(module: str, mutated: MutatedFile, name: str) -> Mutant:
    # mutmut writes x_pressure_drop__mutmut_3 and xǁScoreǁrow__mutmut_1.
    function, _, number = name.partition("__mutmut_")
    lines, spans = mutated.code.splitlines(), mutated.line_span_by_function_name
    old, new = (spans[f"{function}__mutmut_{which}"] for which in ("orig", number))
    before = [line.replace("__mutmut_orig", "") for line in lines[old.start - 1 : old.end]]
    after = [line.replace(f"__mutmut_{number}", "") for line in lines[new.start - 1 : new.end]]
    diff = list(difflib.ndiff(before, after))
    out, put = (" ".join(line[2:].strip() for line in diff if line[0] == sign) for sign in "-+")
    return Mutant(f"{module}.{name}", function.removeprefix("x_").removeprefix("xǁ").replace("ǁ", "."), out, put)


def path_of(module: str) -> str:
    """A module's file in the folder where mutmut works."""
    return f"src/{module.replace('.', '/')}.py"


def _run(mutants: Sequence[Mutant]) -> dict[str, str]:
    """The end of each mutant, by name; works in the current folder."""
    names = [mutant.name for mutant in mutants]
    told = subprocess.run(["mutmut", "run", "--max-children", "1", *names], env=_environment(), capture_output=True, text=True, check=False)
    if told.returncode:
        raise RuntimeError(f"mutmut ended with {told.returncode}: {told.stdout[-4000:]}{told.stderr[-4000:]}")
    codes: dict[str, int | None] = {}
    for file in Path("mutants").rglob("*.meta"):
        codes |= json.loads(file.read_text("utf-8"))["exit_code_by_key"]
    return {name: status_by_exit_code[codes[name]] for name in names}


def bared(code: str) -> str:
    """The same module with each decorator as a call after its function: mutmut leaves alone what is decorated, as most formulas are."""
    return cst.parse_module(code).visit(_Baring()).code


class _Baring(cst.CSTTransformer):
    """Turns ``@marked`` over a function into ``function = marked(function)`` after it."""

    def leave_FunctionDef(
        self, original_node: cst.FunctionDef, updated_node: cst.FunctionDef
    ) -> cst.FunctionDef | cst.FlattenSentinel[cst.BaseStatement]:
        """Take the decorators off; the innermost is called first, as Python does."""
        made: cst.BaseExpression = updated_node.name
        # What was kept before mutmut forks would answer in place of a mutant.
        for decorator in reversed([one for one in updated_node.decorators if not _keeps(one.decorator)]):
            made = cst.Call(decorator.decorator, [cst.Arg(made)])
        if made is updated_node.name:
            return updated_node.with_changes(decorators=())
        called = cst.SimpleStatementLine([cst.Assign([cst.AssignTarget(updated_node.name)], made)])
        return cst.FlattenSentinel([updated_node.with_changes(decorators=()), called])


def _keeps(decorator: cst.BaseExpression) -> bool:
    named = decorator.func if isinstance(decorator, cst.Call) else decorator
    return isinstance(named, cst.Name) and named.value in ("cache", "lru_cache")


def _environment() -> dict[str, str]:
    # CI derandomises the examples of hypothesis, so that the same mutants end alike in every run.
    folders = [str(Path(sys.executable).parent), os.environ.get("PATH", "")]
    kept = {name: value for name, value in os.environ.items() if name != "PYTHONPATH"}
    return {**kept, "CI": "true", "PATH": os.pathsep.join(folders), "PYTHONDONTWRITEBYTECODE": "1"}


def _lay_out(place: Path, group: Group) -> None:
    for name, source in PACKAGES.items():
        shutil.copytree(ROOT / source, place / "src" / name, ignore=shutil.ignore_patterns("__pycache__"))
    for name in COPIED:
        shutil.copytree(ROOT / name, place / name, ignore=shutil.ignore_patterns("__pycache__", "node_modules"))
    paths = [path_of(module) for module in group.modules]
    for path in paths:
        (place / path).write_text(bared((place / path).read_text("utf-8")), "utf-8")
    settings = {
        "source_paths": ["src"],
        "only_mutate": paths,
        "also_copy": list(COPIED),
        "pytest_add_cli_args_test_selection": list(group.tests),
        # Some tests go through the functions of a module: those that mutmut made are none of theirs.
        "pytest_add_cli_args": ["-p", "no:cacheprovider", "-k", "not __mutmut"],
        "track_dependencies": False,
    }
    told = [f"{name} = {json.dumps(value)}" for name, value in settings.items()]
    text = (ROOT / "pyproject.toml").read_text("utf-8")
    (place / "pyproject.toml").write_text("\n".join([text, "[tool.mutmut]", *told, ""]), "utf-8")


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
