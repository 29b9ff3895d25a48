"""The command line: one small module a command, each with `run(options) -> exit status`.

`python3 -m generator` sees to the environment and then runs `python -m generator.cli` inside it.
Exit status 0: done. 1: the guide's own rules or tests have faults, or something is missing. 2: bad input.
"""
