"""Folders are put in their place as a whole, and nothing that is not the guide's is touched."""

import pytest

from generator.cli import folders
from generator.setting_up.telling import Stop


def filler(text):
    """Writes one page."""
    return lambda folder: (folder / "page.md").write_text(text)


def test_a_new_folder_is_written(tmp_path):
    """With its parents, and nothing left beside it."""
    folders.replace(tmp_path / "deep/out", filler("one"))
    assert (tmp_path / "deep/out/page.md").read_text() == "one"
    assert [path.name for path in (tmp_path / "deep").iterdir()] == ["out"]


def test_its_own_folder_is_replaced_as_a_whole(tmp_path):
    """A page that is no longer made does not stay behind."""
    folders.replace(tmp_path / "out", lambda folder: (folder / "old.md").write_text("old"))
    folders.replace(tmp_path / "out", filler("new"))
    assert sorted(path.name for path in (tmp_path / "out").iterdir()) == [folders.MARK, "page.md"]


def test_an_empty_folder_is_taken(tmp_path):
    """Many make the folder first."""
    (tmp_path / "out").mkdir()
    folders.replace(tmp_path / "out", filler("one"))
    assert (tmp_path / "out/page.md").exists()


def test_a_folder_with_other_files_is_refused(tmp_path):
    """Nothing of it is touched."""
    (tmp_path / "mine.txt").write_text("mine")
    with pytest.raises(Stop, match="holds files that this guide did not write"):
        folders.replace(tmp_path, filler("one"))
    assert [path.name for path in tmp_path.iterdir()] == ["mine.txt"]


def test_a_file_is_refused(tmp_path):
    """It is not a folder."""
    (tmp_path / "out").write_text("mine")
    with pytest.raises(Stop, match="is a file"):
        folders.replace(tmp_path / "out", filler("one"))


def test_when_writing_fails_the_old_folder_stays(tmp_path):
    """And nothing half-written is left beside it."""
    folders.replace(tmp_path / "out", filler("whole"))

    def fail(folder):
        (folder / "page.md").write_text("half")
        raise OSError("disk is full")

    with pytest.raises(Stop, match="cannot be written"):
        folders.replace(tmp_path / "out", fail)
    assert (tmp_path / "out/page.md").read_text() == "whole"
    assert [path.name for path in tmp_path.iterdir()] == ["out"]


@pytest.mark.parametrize("place", ["mine.txt/out", "mine.txt/deep/out", f"{'o' * 300}", f"{'o' * 300}/out"])
def test_a_place_that_cannot_be_is_refused(tmp_path, place):
    """A file as the parent, a name that no disk takes: one line with the reason and the next step."""
    (tmp_path / "mine.txt").write_text("mine")
    with pytest.raises(Stop, match="cannot be written .*Give a folder"):
        folders.replace(tmp_path / place, filler("one"))
    assert [path.name for path in tmp_path.iterdir()] == ["mine.txt"]
