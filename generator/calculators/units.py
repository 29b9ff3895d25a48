"""Unit conversion: the only numbers that calculators hold themselves. Exact by definition; sources: SI brochure, 9th edition."""

M2_PER_HA: float = 10000.0
MM_PER_M: float = 1000.0
MM_PER_CM: float = 10.0
G_PER_KG: float = 1000.0
KG_PER_T: float = 1000.0
PER_CENT: float = 100.0
MIN_PER_H: float = 60.0
S_PER_MIN: float = 60.0


def share(percent: float) -> float:
    """A percentage as a share of one: 85 % is 0.85."""
    return percent / PER_CENT


def mm(metres: float) -> int:
    """Metres as whole millimetres (a tie goes to the even one). Lengths are compared and divided only as whole millimetres."""
    return round(metres * MM_PER_M)


def mm_from_cm(centimetres: float) -> int:
    """Centimetres as whole millimetres (a tie goes to the even one)."""
    return round(centimetres * MM_PER_CM)
