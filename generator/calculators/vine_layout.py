"""Where the nodes of one vine go: on the spur positions it has, or on canes with renewal spurs, on the real length of wire.

One layout for one target; the choice between layouts is layout_options.py. Targets are `spur`, `long_spurs`, `spurs_with_canes`,
`lay_new_arm` (one full cane in the place of one arm) and `cane`.
"""

from generator.calculators.arm_layout import lay_new_arm
from generator.calculators.layout_forms import canes_beside, lay_canes, lay_spurs
from generator.calculators.layout_records import (
    LONG_SPURS,
    NEW_ARM,
    SPUR,
    SPURS_WITH_CANES,
    TARGETS,
    VineLayoutInputs,
    VineLayoutResult,
    VineLayoutValues,
)


def vine_layout(inputs: VineLayoutInputs, values: VineLayoutValues) -> VineLayoutResult:
    """One layout. Raises ValueError for another target, or when a length leaves no wire."""
    if inputs.target not in TARGETS:
        raise ValueError("there is no layout for this target")
    if inputs.nodes < 1:
        raise ValueError("a vine keeps at least one node")
    if inputs.target == NEW_ARM:
        return lay_new_arm(inputs, values)
    if inputs.target == SPUR:
        return lay_spurs(inputs, values, SPUR, int(values.nodes_per_spur_most), True, [])
    if inputs.target == LONG_SPURS:
        return lay_spurs(inputs, values, LONG_SPURS, int(values.nodes_per_long_spur_most), False, [])
    if inputs.target == SPURS_WITH_CANES:
        return lay_spurs(inputs, values, SPURS_WITH_CANES, int(values.nodes_per_spur_most), True, canes_beside(inputs, values))
    first = 1
    if inputs.canes_wanted_per_vine.ok:
        first = int(inputs.canes_wanted_per_vine.number)
    return lay_canes(inputs, values, first, max(first, int(values.canes_per_vine_most)))
