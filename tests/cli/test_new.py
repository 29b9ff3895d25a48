"""new: what cannot be begun is said on one line; nothing is written then."""

import pytest


@pytest.mark.parametrize(
    ("kind", "name", "line"),
    [
        ("fct", "soil_depth_m", "error: There is no kind `fct`. Did you mean `fact`?"),
        ("fact", "Soil Depth", "error: "),
        ("fact", "row_spacing_m", "error: "),
    ],
)
def test_what_cannot_be_begun_is_one_line(command, kind, name, line):
    """A kind that is none, an id that will not do, an id that is taken: status 2."""
    done = command("new", kind, name)
    assert (done.returncode, done.stdout) == (2, "")
    assert done.stderr.startswith(line)
    assert len(done.stderr.splitlines()) == 1
