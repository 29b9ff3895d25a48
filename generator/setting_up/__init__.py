"""Setting up: the project's own environment, made by the standard library alone, and the browser for the tests.

Everything in this folder parses under old Pythons (no annotations, no f-strings), so that "Python too old" is a
message and not a syntax error. Imported by `generator/__main__.py` and `generator/cli/` only.
"""
