"""The guide as a MkDocs plugin: events only. What is built stands in build.py and pages/."""

import importlib
import sys
from pathlib import Path

from mkdocs.config import config_options
from mkdocs.config.base import Config
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import PluginError
from mkdocs.livereload import LiveReloadServer
from mkdocs.plugins import BasePlugin
from mkdocs.structure.files import File, Files

from generator.pages.broken import with_problems
from generator.pages.policy import POLICY_FILE, policy

PACKAGE = Path(__file__).parent
WATCHED = ("pages/templates", "pages/assets", "pages/theme", "pages/anatomy", "pages/drawing", "calculators")


class GuideConfig(Config):
    """rules: the folder of the rules; edition: a folder of local rules laid over them, or empty. Relative to mkdocs.yml."""

    rules = config_options.Dir(exists=True, default="rules")
    edition = config_options.Type(str, default="")


class GuidePlugin(BasePlugin[GuideConfig]):
    """Adds the generated pages, scripts and style sheet to the site; in serve mode it outlives broken rules."""

    def on_startup(self, *, command: str, dirty: bool) -> None:
        """Keeps this plugin alive between the builds of `mkdocs serve`, with the last sound pages."""
        self.serving = command == "serve"
        self.sound: dict[str, str | bytes] = {}

    def on_files(self, files: Files, *, config: MkDocsConfig) -> Files:
        """Puts our files in and leaves the host theme's scripts, styles and fonts out."""
        for file in list(files):
            if file.src_dir != config.docs_dir and file.src_uri.startswith("assets/"):
                files.remove(file)
        for path, content in self._pages(config).items():
            written = files.get_file_from_path(path)
            if written:
                files.remove(written)
            files.append(File.generated(config, path, content=content))
        return files

    def on_serve(self, server: LiveReloadServer, *, config: MkDocsConfig, builder) -> LiveReloadServer:
        """Watches what pages are made of: rules, edition, templates, assets, calculators."""
        for folder in [self.config.rules, self._edition(config), *(PACKAGE / name for name in WATCHED)]:
            if folder:
                server.watch(str(folder))
        return server

    def on_post_build(self, *, config: MkDocsConfig) -> None:
        """Writes the Content-Security-Policy beside the pages; drops a sitemap that could name no host."""
        site = Path(config.site_dir)
        (site / POLICY_FILE).write_text(policy(site) + "\n", encoding="utf-8")
        if not config.site_url:
            for name in ("sitemap.xml", "sitemap.xml.gz"):
                (site / name).unlink(missing_ok=True)

    def _edition(self, config: MkDocsConfig) -> Path | None:
        """The folder of the edition, if one is laid over the rules."""
        return Path(config.config_file_path).parent / self.config.edition if self.config.edition else None

    def _pages(self, config: MkDocsConfig) -> dict[str, str | bytes]:
        """The files of the site. A problem fails a build with one list; while serving it is told on the pages."""
        build, problems = _modules(fresh=self.serving)
        try:
            self.sound = build.build_pages(Path(self.config.rules), self._edition(config), Path(config.docs_dir), parts=self.serving)
        except problems.ProblemsFound as found:
            if not self.serving:
                raise PluginError(f"The rules are not sound.\n{found}") from None
            return with_problems(self.sound, found.problems)
        return self.sound


def _modules(fresh: bool) -> tuple:
    """The modules build and problems; fresh ones are read from disk again, so that a changed calculator counts."""
    if fresh:
        for name in [name for name in sys.modules if name.startswith("generator.") and name != __name__]:
            del sys.modules[name]
    return importlib.import_module("generator.build"), importlib.import_module("generator.problems")
