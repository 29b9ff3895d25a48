"""The rulebook as pages: Jinja templates in, {path: Markdown, JavaScript, CSS} out. Nothing here knows the host."""
