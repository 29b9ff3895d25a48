"""Nodes shared out over spur positions, in the order along the arms."""


def total(lengths: list[int]) -> int:
    """The nodes of all bearers together."""
    return sum(lengths)


def positions_on_new_arms(arm_mm: int, first_mm: int, spacing_mm: int) -> int:
    """Spur positions of one new arm: 1 + floor((arm - first) / spacing) (evidence hg-06). Raises ValueError when the
    spacing is not above zero."""
    if spacing_mm <= 0:
        raise ValueError("the distance of spur positions must be above zero")
    if first_mm > arm_mm:
        return 0
    return 1 + (arm_mm - first_mm) // spacing_mm


def even_spurs(nodes: int, positions: int, most: int) -> list[int]:
    """Spurs as alike as the nodes allow, none over `most` and none without a node; the longer ones spread along the arms.

    With fewer nodes than positions some positions carry no spur, and the list is shorter than the positions are.
    """
    spurs = min(nodes, positions)
    if spurs < 1:
        return []
    given = min(nodes, spurs * most)
    base = given // spurs
    return [base + one_more(k, given % spurs, spurs) for k in range(spurs)]


def long_spurs(nodes: int, positions: int, most: int) -> list[int]:
    """Long spurs of `most` nodes among one-node spurs that renew them; what is left over lengthens one of the short ones."""
    spurs = min(nodes, positions)
    if spurs < 1:
        return []
    spare = min(nodes, spurs * most) - spurs
    long = spare // (most - 1)
    lengths = [1 + one_more(k, long, spurs) * (most - 1) for k in range(spurs)]
    return lengthened(lengths, spare % (most - 1))


def one_more(place: int, extra: int, places: int) -> int:
    """1 where one of `extra` falls when they are spread evenly over the places, else 0."""
    return (place + 1) * extra // places - place * extra // places


def lengthened(lengths: list[int], nodes: int) -> list[int]:
    """The same spurs with the first one-node spur longer by the nodes left over."""
    if nodes == 0:
        return lengths
    longer: list[int] = []
    left = nodes
    for length in lengths:
        if length == 1:
            longer.append(1 + left)
            left = 0
        else:
            longer.append(length)
    return longer
