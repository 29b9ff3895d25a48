"""Calculators in a strict subset of Python: pytest runs them as they are, the compiler turns them into JavaScript."""
