"""Answers: the rulebook as data for calculators and pages, and computing an answer with all that every answer shows."""
