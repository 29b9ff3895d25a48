"""The node number: what the crop asks for, held between what the vine carries, what the canopy has room for, and the law.

See reconcile.py for the rule, node_views.py for the views, vine_classes.py for weak, normal and strong vines. A view that is not known is
left out and said so; without the crop there is a range and no number. (Agronomy, section 1; evidence hg-08, bp-28, B04, ll-01 to ll-06.)
"""

from generator.calculators.counting import down
from generator.calculators.drawing_views import Row, draw_views
from generator.calculators.facts import Maybe
from generator.calculators.node_records import NodeNumberInputs, NodeNumberResult, NodeNumberValues
from generator.calculators.node_views import bearing_here, capacity_of, fruit_view, legal_of, space_view, weighed
from generator.calculators.node_words import Load, headline_of, notes_of, working_of
from generator.calculators.say import Say
from generator.calculators.units import PER_CENT
from generator.calculators.vine_classes import Mix, VineClasses, vine_classes
from generator.calculators.views import Chosen, View, Views, chosen_of, most_of_a_vine, rule_notes, tonnes
from generator.calculators.yield_told import Most, absurd_notes

# Of a row: words and sentence of a range, then of one number.
FRUIT_WORDS: list[str] = ["node_number.row_fruit", "node_number.told_fruit", "node_number.row_fruit_one", "node_number.told_fruit_one"]
CAPACITY_WORDS: list[str] = ["node_number.row_capacity", "node_number.told_capacity", "node_number.row_capacity_one", "node_number.told_capacity_one"]
ROOM_WORDS: list[str] = ["node_number.row_room", "node_number.told_room", "node_number.row_room_one", "node_number.told_room_one"]


def node_number(inputs: NodeNumberInputs, values: NodeNumberValues) -> NodeNumberResult:
    """The number with its range. Raises ValueError when no view can be taken or one is the wrong way round."""
    views = Views(fruit_view(inputs, values), capacity_of(inputs, values), space_view(inputs), legal_of(inputs), bearing_here(inputs))
    if not views.fruit.ok and not views.capacity.ok and not views.room.ok:
        raise ValueError("take one view at least: the crop wanted with its counts, the weight of the prunings, or the vine spacing")
    chosen = chosen_of(views)
    mix = Mix(inputs.weak_vines_pct, inputs.strong_vines_pct, inputs.weak_vine_nodes_pct, inputs.strong_vine_nodes_pct)
    classes = vine_classes(chosen.nodes, mix, most_of_a_vine(views)) if chosen.ok else vine_classes(1.0, mix, Maybe(False, 0.0))
    bounded = chosen.bounded
    absurd = absurd_notes(asked_for(views, chosen), 0.0, Maybe(False, 0.0), Most(values.nodes_per_vine_in_print, 0.0))
    return NodeNumberResult(
        Maybe(chosen.ok, chosen.nodes),
        Maybe(chosen.ok, chosen.exact),
        Maybe(bounded, chosen.low),
        Maybe(bounded, chosen.high),
        chosen.limit,
        Maybe(views.fruit.ok, views.fruit.nodes),
        Maybe(views.fruit.ok, views.fruit.low),
        Maybe(views.fruit.ok, views.fruit.high),
        Maybe(views.capacity.ok, views.capacity.low),
        Maybe(views.capacity.ok, views.capacity.high),
        Maybe(views.room.ok, views.room.low),
        Maybe(views.room.ok, views.room.high),
        Maybe(views.law.ok, views.law.high),
        Maybe(chosen.ok, classes.weak_whole),
        Maybe(chosen.ok, classes.normal_whole),
        Maybe(chosen.ok, classes.strong_whole),
        Maybe(chosen.ok, classes.mean_whole),
        tonnes(views.bearing, chosen.nodes) if chosen.ok else Maybe(False, 0.0),
        draw_views(rows_of(views), Maybe(chosen.ok, chosen.nodes)),
        absurd[0] if len(absurd) > 0 and chosen.nodes > values.nodes_per_vine_in_print else headline_of(chosen, classes, mix),
        working_of(views, chosen) + class_lines(chosen, classes, mix),
        absurd + notes_of(views, chosen, classes, mix, inputs.target_yield_t_ha, Load(values.load_low_below, values.load_high_above)) + by_hand(inputs, values),
    )


def asked_for(views: Views, chosen: Chosen) -> float:
    """The most nodes that the crop asks for or that would be kept; 0 where neither is known."""
    return max(views.fruit.nodes if views.fruit.ok else 0.0, chosen.nodes if chosen.ok else 0.0)


def by_hand(inputs: NodeNumberInputs, values: NodeNumberValues) -> list[Say]:
    """What to know of a rule of balanced pruning that was chosen by hand."""
    return [] if inputs.capacity_nodes_high.ok else rule_notes(weighed(inputs, values))


def class_lines(chosen: Chosen, classes: VineClasses, mix: Mix) -> list[Say]:
    """How the numbers of the three kinds of vine were reckoned."""
    if not chosen.ok:
        return []
    middle = PER_CENT - mix.weak_pct - mix.strong_pct
    exact = [chosen.nodes, classes.weak, classes.normal, classes.strong]
    whole = [mix.weak_pct, classes.weak_whole, middle, classes.normal_whole, mix.strong_pct, classes.strong_whole, classes.mean_whole]
    return [Say("node_number.classes_exact", exact, []), Say("node_number.classes_mean", whole, [])]


def rows_of(views: Views) -> list[Row]:
    """The views as rows of the drawing."""
    rows: list[Row] = []
    if views.fruit.ok:
        rows.append(row_of(FRUIT_WORDS, views.fruit))
    if views.capacity.ok:
        rows.append(row_of(CAPACITY_WORDS, views.capacity))
    if views.room.ok:
        rows.append(row_of(ROOM_WORDS, views.room))
    if views.law.ok:
        most = [float(down(views.law.high))]
        rows.append(Row(0.0, views.law.high, Say("node_number.row_law", most, []), Say("node_number.told_law", most, [])))
    return rows


def row_of(says: list[str], view: View) -> Row:
    """A view as a row with its words and its sentence: those of a range, or those of one number."""
    if view.low == view.high:
        return Row(view.low, view.high, Say(says[2], [view.high], []), Say(says[-1], [view.high], []))
    ends = [view.low, view.high]
    return Row(view.low, view.high, Say(says[0], ends, []), Say(says[1], ends, []))
