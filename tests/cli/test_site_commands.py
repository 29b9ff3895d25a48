"""build and write: a whole folder or none."""

import pytest


def test_the_site_is_built_with_its_pages_and_its_policy(site):
    """Pages end in .html, so that one build serves a host, a course and a disk."""
    assert (site / "index.html").exists() and (site / "plan.html").exists()
    assert (site / "content-security-policy.txt").read_text().startswith("default-src 'self'")


def test_a_build_into_a_folder_with_other_files_is_refused(command, tmp_path):
    """Nothing there is touched."""
    (tmp_path / "mine.txt").write_text("mine")
    done = command("build", "--out", str(tmp_path))
    assert done.returncode == 2
    assert "holds files that this guide did not write" in done.stderr
    assert [path.name for path in tmp_path.iterdir()] == ["mine.txt"]


@pytest.mark.parametrize("words", [("build", "--out", ""), ("write", "")])
def test_a_folder_without_a_name_is_refused(command, words):
    """An unset variable of a script must not have the site built somewhere."""
    done = command(*words)
    assert (done.returncode, done.stdout) == (2, "")
    assert done.stderr == "error: The name of the folder to write into is empty. Give one, such as `out`.\n"


def test_the_pages_are_written_as_plain_files(command, tmp_path):
    """Markdown for any host, with the scripts beside it; a second time replaces the first."""
    for _ in range(2):
        done = command("write", str(tmp_path / "pages"))
        assert done.returncode == 0, done.stderr
    assert (tmp_path / "pages/plan.md").exists() and (tmp_path / "pages/assets/guide/core.js").exists()
    assert not (tmp_path / "pages/index.html").exists()


def test_broken_rules_leave_the_written_pages_as_they_were(command, tmp_path):
    """Every problem is told; nothing half-right is published."""
    command("write", str(tmp_path / "pages"))
    before = (tmp_path / "pages/plan.md").read_bytes()
    (tmp_path / "edition").mkdir()
    (tmp_path / "edition/edition.yml").write_text("id: broken\nname: Broken\nby: nobody\n")
    (tmp_path / "edition/values").mkdir()
    (tmp_path / "edition/values/tip_gap_m.yml").write_text("label: broken\n")
    done = command("write", str(tmp_path / "pages"), "--edition", str(tmp_path / "edition"))
    assert done.returncode == 1
    assert "values/tip_gap_m.yml:" in done.stderr and "Traceback" not in done.stderr
    assert (tmp_path / "pages/plan.md").read_bytes() == before
