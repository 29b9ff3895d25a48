"""Problems are data: what is wrong, where it stands, and what to do next. Nothing below this module."""

from dataclasses import dataclass, field


@dataclass(frozen=True, order=True)
class Problem:
    """One fault that an author can mend.

    path is relative to the project's root with forward slashes; line counts from 1 (0: there is no such file);
    sentence is in the author's words and ends with a full stop; next_step, when there is one, says what to write.
    """

    path: str
    line: int
    sentence: str
    next_step: str = ""
    check: str = field(default="", compare=False)

    def __str__(self) -> str:
        """`path:line: sentence` (`path: sentence` of a file that is not there), then the next step on an indented line."""
        first = f"{self.path}{f':{self.line}' if self.line else ''}: {self.sentence}"
        return f"{first}\n    {self.next_step}" if self.next_step else first


class ProblemsFound(Exception):
    """Raised by steps that cannot go on; carries every problem of the run, sorted."""

    def __init__(self, problems: list[Problem]) -> None:
        self.problems = sorted(set(problems))
        super().__init__("\n".join(str(problem) for problem in self.problems))
