"""What the node number says: the answer, the working view by view, which view limits, and what a conflict means."""

from dataclasses import dataclass

from generator.calculators.counting import down, half_up
from generator.calculators.facts import Maybe
from generator.calculators.reconcile import CAPACITY, FRUIT, LEGAL, ROOM_LOW
from generator.calculators.say import Say
from generator.calculators.vine_classes import Mix, VineClasses, fewer_on_weak
from generator.calculators.views import Chosen, View, Views, tonnes


@dataclass(frozen=True)
class Load:
    """Where a load per vine is called low (below) and high (above)."""

    low_below: float
    high_above: float


def headline_of(chosen: Chosen, classes: VineClasses, mix: Mix) -> Say:
    """The answer in one line."""
    if not chosen.ok:
        return Say("node_number.no_crop", [chosen.low, chosen.high], [])
    if mix.weak_pct + mix.strong_pct <= 0.0 or classes.weak_whole == classes.strong_whole:
        return Say("node_number.headline_alike", [chosen.nodes], [])
    return Say("node_number.headline", [chosen.nodes, classes.weak_whole, classes.normal_whole, classes.strong_whole], [])


def working_of(views: Views, chosen: Chosen) -> list[Say]:
    """View by view, then the rule."""
    lines: list[Say] = []
    if views.fruit.ok:
        lines = lines + [Say("node_number.view_fruit", [views.fruit.nodes, views.fruit.low, views.fruit.high], [])] + views.fruit.lines
    if views.capacity.ok:
        lines = lines + [Say("node_number.view_capacity", [views.capacity.low, views.capacity.high], [])] + views.capacity.lines
    if views.room.ok:
        lines = lines + [Say("node_number.view_room", [views.room.low, views.room.high], [])] + views.room.lines
    lines = lines + views.law.lines
    if not chosen.bounded:
        return lines
    lines.append(Say("node_number.limits", [chosen.low, chosen.high], []))
    if chosen.ok:
        lines.append(Say("node_number.held", [views.fruit.nodes, chosen.low, chosen.high, chosen.nodes], []))
    return lines


def notes_of(views: Views, chosen: Chosen, classes: VineClasses, mix: Mix, target: Maybe, load: Load) -> list[Say]:
    """What limits and what to do about it, conflicts between vine and wire, what was not taken, and what to mind."""
    notes = conflict_notes(views, chosen, target, chosen.nodes)
    if chosen.ok:
        notes = notes + [load_note(chosen.nodes, load)] + raising(views, chosen)
        notes = notes + drawn_together(classes, mix)
    return notes + law_notes(views)


def drawn_together(classes: VineClasses, mix: Mix) -> list[Say]:
    """That strong vines cannot have their share, and what fewer nodes on weak ones would do to the mean."""
    fewer = fewer_on_weak(mix, classes, 1.0)
    if len(fewer) == 0:
        return []
    if classes.weak_whole == classes.strong_whole:
        return [Say("node_number.alike", [classes.normal_whole] + fewer, [])]
    return [Say("node_number.together", fewer, [])]


def conflict_notes(views: Views, chosen: Chosen, target: Maybe, placed: float) -> list[Say]:
    """What limits, what crop is honest, conflicts between vine and wire, and what was not taken. placed: the nodes that find a place."""
    notes: list[Say] = []
    if chosen.ok and chosen.bounded:
        notes = verdict(views, chosen)
    return notes + honest_crop(views, chosen, target, placed) + vine_and_wire(views) + missing_views(views)


def law_notes(views: Views) -> list[Say]:
    """That a limit of the law is the one entered, and no advice."""
    return [Say("node_number.not_advice", [], [])] if views.law.ok else []


def verdict(views: Views, chosen: Chosen) -> list[Say]:
    """Which view limits."""
    numbers = [views.fruit.nodes, chosen.low, chosen.high]
    if chosen.limit == FRUIT:
        return [Say("node_number.agree", numbers, [])]
    if chosen.limit == ROOM_LOW:
        weak = views.capacity.ok and views.room.ok and views.capacity.high < views.room.low
        says = "node_number.keep_on_weak" if weak else "node_number.keep_and_thin"
        return [Say(says, [views.fruit.nodes, chosen.nodes], [])] + thinning(views, chosen)
    if chosen.limit == CAPACITY:
        return [Say("node_number.over_capacity", [views.fruit.nodes, chosen.high], [])]
    if chosen.limit == LEGAL:
        return [Say("node_number.over_law", [views.fruit.nodes, chosen.high], [])]
    return [Say("node_number.over_room", [views.fruit.nodes, chosen.high], [])]


def thinning(views: Views, chosen: Chosen) -> list[Say]:
    """How many bunches the nodes that stay carry over the wish."""
    over = (chosen.nodes - views.fruit.nodes) * views.bearing.links.bunches_per_node
    if not views.bearing.ok or over < 1.0:
        return []
    return [Say("node_number.thin", [over], [])]


def honest_crop(views: Views, chosen: Chosen, target: Maybe, placed: float) -> list[Say]:
    """What crop is honest where the nodes that find a place are fewer than the wish asks for."""
    crop = tonnes(views.bearing, placed)
    if not chosen.ok or not crop.ok or not chosen.bounded or placed >= float(half_up(views.fruit.nodes)):
        return []
    if not target.ok:
        return [Say("node_number.honest_crop_alone", [crop.number, placed], [])]
    return [Say("node_number.honest_crop", [crop.number, placed, target.number], [])]


def vine_and_wire(views: Views) -> list[Say]:
    """Where the vine could carry more than the wire holds or the law allows, or cannot fill the wire."""
    if not views.capacity.ok or not views.room.ok:
        return []
    if views.law.ok and views.law.high < min(views.room.high, views.capacity.low):
        return [carries_more(["node_number.more_than_law", "node_number.more_than_law_one"], views.capacity, float(down(views.law.high)))]
    if views.capacity.low > views.room.high:
        return [carries_more(["node_number.more_than_wire", "node_number.more_than_wire_one"], views.capacity, views.room.high)]
    if views.capacity.high < views.room.low:
        return [Say("node_number.less_than_wire", [views.capacity.high, views.room.low], [])]
    return []


def carries_more(says: list[str], vine: View, most: float) -> Say:
    """That the vine could carry more than so many nodes: the first sentence tells its range, the second its one number."""
    if vine.low == vine.high:
        return Say(says[-1], [vine.high, most], [])
    return Say(says[0], [vine.low, vine.high, most], [])


def missing_views(views: Views) -> list[Say]:
    """The views that were not taken, and what they need."""
    notes: list[Say] = []
    if not views.fruit.ok:
        notes.append(Say("node_number.lacks_fruit", [], []))
    if not views.capacity.ok:
        notes.append(Say("node_number.lacks_capacity", [], []))
    if not views.room.ok:
        notes.append(Say("node_number.lacks_room", [], []))
    return notes


def load_note(nodes: float, load: Load) -> Say:
    """What so many nodes on a vine are called."""
    limits = [nodes, load.low_below, load.high_above]
    if nodes < load.low_below:
        return Say("node_number.load_low", limits, [])
    if nodes > load.high_above:
        return Say("node_number.load_high", limits, [])
    return Say("node_number.load_medium", limits, [])


def raising(views: Views, chosen: Chosen) -> list[Say]:
    """More nodes than last season: never to mend a poor crop."""
    before = views.bearing.nodes_left
    if before.ok and chosen.nodes > before.number:
        return [Say("node_number.never_raise", [chosen.nodes, before.number], [])]
    return []
