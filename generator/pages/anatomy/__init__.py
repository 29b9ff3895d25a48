"""The anatomy drawings: one module for each item of rules/looks/, of the same name, with `draw() -> list[Picture]`."""
