"""Checks of a rulebook: proofs about tables, worked examples, references, standings, messages, ids; each a small file
of its own."""

from generator.checks.listing import CHECKS, check_rulebook, manual
from generator.checks.printing import as_annotations, as_json, as_text

__all__ = ["CHECKS", "as_annotations", "as_json", "as_text", "check_rulebook", "manual"]
