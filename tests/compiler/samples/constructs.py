"""Every construct of the subset in small functions, for the tests alone: they are fed with extreme arguments."""

import math
from dataclasses import dataclass

from generator.calculators.exactmath import exp, log, power
from generator.calculators.numbertext import fixed, join

LIMIT: int = 7
SHARES: list[float] = [0.5, -0.25, 1e-05, 1e16]
ORIGIN: list[int] = [LIMIT, -1, 0]


@dataclass(frozen=True)
class Nothing:
    """An empty record."""


@dataclass(frozen=True)
class Point:
    """A record with defaults. A multi-line docstring
    with */ inside."""

    x: float
    count: int = -3
    name: str = "default"
    seen: bool = False


@dataclass(frozen=True)
class Path:
    """A record of records and lists."""

    points: list[Point]
    steps: list[list[float]]
    nothing: Nothing


@dataclass(frozen=True)
class Walk(Path):
    """A record that goes on from another: the other's fields come first."""

    weary: float
    points_seen: int


def add(a: int, b: int) -> int:
    return a + b


def subtract(a: int, b: int) -> int:
    return a - b


def multiply(a: int, b: int) -> int:
    return a * b


def plus_two(a: int) -> int:
    return a + 2


def near_the_limit(xs: list[int], n: int, choice: int) -> int:
    """Sums and products of small numbers with large literals, one at a time, so that each span must be right."""
    if choice % 6 == 0:
        return len(xs) * -4503599627370497
    if choice % 6 == 1:
        return len(xs) + 9007199254740989
    if choice % 6 == 2:
        return n % 1000 + 9007199254740900
    if choice % 6 == 3:
        return -9007199254740989 - len(xs)
    if choice % 6 == 4:
        return max([i + 9007199254740988 for i in range(len(xs))])
    return n // 2 + 9007199254740900


def doubling(n: int) -> int:
    """A name that gets several values has no span of its own."""
    product = 1
    for _ in range(n % 60):
        product = product * 2
    return product


def negative(a: int) -> int:
    return -a


def negative_zero(a: int, x: float) -> float:
    """An int -0 must not leak into a float."""
    return x / (1.0 if a % LIMIT != 0 else float(-(a % LIMIT)) + x * x)


def zero_times(a: bool, x: float) -> float:
    """A small product that is proved exact keeps no sign of zero: 0 * -1 is 0."""
    nothing = int(a) * -1
    return float(nothing) * x


def floor_divide(a: int, b: int) -> int:
    return a // b


def modulo(a: int, b: int) -> int:
    return a % b


def divide_floats(a: float, b: float) -> float:
    return a / b


def divide_ints(a: int, b: int) -> float:
    return a / b + 1 / 4 - a / 2.5


def mixed(a: int, x: float) -> float:
    return a * x + a - x * 2 + 1


def tree(a: float, b: float, c: float) -> float:
    """Sums and products keep the tree that is written."""
    return a + (b + c) - (a - (b - c)) * (a * (b * c)) - a * -(-b) + -(a - b)


def rounded(x: float) -> int:
    return round(x)


def truncated(x: float) -> int:
    return int(x)


def floor(x: float) -> int:
    return math.floor(x)


def ceiling(x: float) -> int:
    return math.ceil(x)


def sign_of_rounding(x: float, y: float) -> float:
    """A rounded -0.4 is a plain 0."""
    return y * round(x) + y * math.ceil(x) + y * int(x)


def root(x: float) -> float:
    return math.sqrt(x)


def sizes(x: float, n: int) -> list[float]:
    return [abs(x), float(abs(n)), abs(-x)]


def order(a: float, b: float, c: float) -> list[float]:
    return [min(a, b), max(a, b), min(a, b, c), max([a, b, c]), min(0.0, a), max(-0.0, a)]


def order_ints(xs: list[int]) -> list[int]:
    return [min(xs), max(xs), sum(xs), sum(x * 2 for x in xs if x != 0)]


def plain_sum(xs: list[int]) -> int:
    return sum(xs)


def order_floats(xs: list[float]) -> float:
    return min(xs) - max(x + 1.0 for x in xs)


def exact_sum(xs: list[float]) -> float:
    return math.fsum(xs)


def exact_sum_endless(x: float, n: int) -> float:
    """inf and -inf have no sum."""
    endless = 1e308 * 10.0
    return math.fsum([x, endless if n > 0 else 1.0, -endless if n % 2 == 0 else -x])


def exact_sum_near(xs: list[float]) -> float:
    """Partial sums that cancel and leave a half."""
    return math.fsum([1e16, 1.0, -1e16, 1e-16] + xs + [2.0, 1e16, -2.0])


def exact_half(n: int, up: bool) -> float:
    """A half between two floats, decided by what lies far below."""
    return math.fsum([1.0 + float(n % 4) * 2.220446049250313e-16, 1.1102230246251565e-16, 1e-40 if up else -1e-40])


def compared(a: float, b: float, n: int) -> list[bool]:
    return [a < b, a <= b, a > b, a >= b, a == b, a != b, n < a, a == n, 0 <= n < LIMIT, a < b <= 5.0 < 8.0, not a != b, not n < a]


def texts(a: str, b: str, names: list[str]) -> list[bool]:
    return [a == b, a != b, a in names, b not in names, a in ["a", "__proto__"], (a == b) == True, a in ["a", b] or b == "b"]


def logic(a: bool, b: bool, c: bool) -> list[bool]:
    return [a and b or c, a and (b or c), not a or b, not (a and b), a == b, a != c, not a == b, a if b else c]


def lazy(xs: list[int], i: int) -> bool:
    """and, or stop at what decides."""
    return 0 <= i and i < len(xs) and xs[i] > 0 or len(xs) == 0


def conditional(a: int, x: float) -> float:
    return (x if a > 0 else -x) + (1.0 if a > 1 else 2.0 if a < 0 else 3.0)


def conditional_span(a: int, flag: bool) -> int:
    return (a if flag else 3) + (1 if flag else 2)


def flags(a: bool, b: bool) -> list[int]:
    return [int(a), int(a and b)]


def whole_flags(a: bool, b: bool) -> int:
    return int(a) - int(b) + int(a and b) * -3 + LIMIT


def indexed(xs: list[float], i: int) -> float:
    return xs[i]


def nested(xs: list[list[float]], i: int, j: int) -> float:
    return xs[i][j] + xs[-1][0]


def sliced(xs: list[float], a: int, b: int) -> list[list[float]]:
    return [xs[a:b], xs[a:], xs[:b], xs[:], xs[-2:], xs[1:-1]]


def joined(xs: list[float], ys: list[float], n: int) -> list[float]:
    return xs + ys + [0.5] * (n if n < 5 else 2) + [xs[0]] + SHARES


def doubled(xs: list[list[int]]) -> list[list[int]]:
    """Joining lists of lists goes one level deep."""
    return xs + [[1], [-1]] + xs[1:]


def mapped(xs: list[float]) -> list[float]:
    return [x * x - x for x in xs]


def kept(xs: list[float], ys: list[float]) -> list[float]:
    """Condition and item are worked out in turn, so that the first error is the same one."""
    return [failing(-x) / x for x in xs if 1.0 / (x - 1.0) > 0.0 or x < 0.5 if ys[0] > 0.0]


def paired(xs: list[float], ns: list[int]) -> list[float]:
    return [x * n for x, n in zip(xs, ns)] + [x - i for i, x in enumerate(xs) if i > 0]


def quantified(xs: list[float], ns: list[int]) -> list[bool]:
    return [any(1.0 / x > 0.5 for x in xs), all(x != 0.0 for x in xs), any(n > 2 and n < 5 for n in ns), all(a == n for a, n in zip(ns, ns[1:]))]


def counted(n: int) -> list[int]:
    small = n % 9
    return [i * i for i in range(small)] + [i for i in range(small, -3, -1)] + [i for i in range(-4, small, 2) if i != 0]


def sorted_floats(xs: list[float]) -> list[float]:
    return sorted(xs, key=lambda x: x)


def sorted_points(points: list[Point]) -> list[Point]:
    """Stable, in two passes, the weaker key first."""
    return sorted(sorted(points, key=lambda p: -p.count), key=lambda p: p.x)


def sorted_far(n: int) -> list[int]:
    """More than ten items of few kinds: older engines sorted those unstably."""
    return sorted(list_of(30, n), key=lambda x: x % 3)


def list_of(length: int, n: int) -> list[int]:
    return [(i * 7 + n % 11) % 31 for i in range(length % 40)]


def augmented(x: float, n: int) -> list[float]:
    x_now = x
    x_now += 1.5
    x_now -= x
    x_now *= -2
    x_now /= 3
    count = n
    count += 1
    count *= 2
    count -= 3
    count %= 7
    return [x_now, float(count)]


def loops(xs: list[float], n: int) -> list[float]:
    """for over a list, enumerate, zip and range; names used again by another loop; break and continue."""
    out: list[float] = []
    for x in xs:
        if x < 0.0:
            continue
        if x > 50.0:
            break
        out.append(x)
    for i, x in enumerate(xs):
        out.append(x * i)
    for x, y in zip(xs, xs[1:]):
        out.append(x - y)
    for i in range(len(out) - 1, -1, -1):
        out = out + [out[i]]
    for i in range(n % 4):
        for j in range(i, 5):
            out.append(float(i * j))
    return out


def range_end_once(n: int) -> int:
    """The end of a range is worked out once."""
    end = n % 5
    times = 0
    for _ in range(end):
        end += 1
        times += 1
        if times > 20:
            break
    return times * 100 + end


def odometer(sizes: list[int]) -> int:
    """A while loop with break that counts all places of wheels of 1 to 3 digits."""
    wheels = [size % 3 + 1 for size in sizes[:5]]
    places = [0 for _ in wheels]
    turns = 0
    while True:
        turns += 1
        at = len(wheels) - 1
        while at >= 0 and places[at] == wheels[at] - 1:
            at -= 1
        if at < 0:
            break
        places = places[:at] + [places[at] + 1] + [0 for _ in places[at + 1 :]]
    return turns


def halved(n: int) -> int:
    steps = 0
    rest = abs(n)
    while rest > 0:
        rest //= 2
        steps += 1
    return steps


def branches(x: float, flag: bool) -> str:
    """A name that gets its value in each branch."""
    if x > 1.0:
        size = "large"
    elif x > 0.0:
        size = "small"
    elif flag:
        size = "flagged"
    else:
        return "none"
    return size


def branches_of_their_own(x: float, n: int) -> float:
    """A name that only the later branches know, one that a single branch knows, one of a nested if."""
    result = 0.0
    if x > 5.0:
        result = x
    elif x > 0.0:
        part = x * 2.0
        result = part
    elif n > 0:
        part = x * 3.0
        if n > 5:
            deep = part + 1.0
            result = deep
        else:
            deep = part - 1.0
            result = deep + len([part for part in [deep] if part > 0.0])
    else:
        other = x - 1.0
        result = other
    return result


def scoped(xs: list[int]) -> int:
    """A name of one block, used again as the name of a comprehension and after a loop."""
    best = 0
    for value in xs:
        twice = value % 1000 * 2
        if twice > best:
            best = twice
    value = len([value for value in xs if value > 0])
    return best + value


def reserved(default: int, new: float, var: str, Math: float) -> float:
    """Words that JavaScript keeps for itself."""
    function = default % 7
    this = [delete * 2.0 for delete in [new, Math]]
    return this[0] + float(function) if var != "a" else typeof(new)


def typeof(x: float) -> float:
    """A function with such a name."""
    return x + 1.0


def built(x: float, n: int) -> Path:
    point = Point(x, name="it's \"quoted\" \\ \u2212 \n")
    return Path(points=[point, Point(1.5, n, seen=x > 0.0), Point(x)], steps=[[x], []], nothing=Nothing())


def read(path: Path) -> float:
    total = 0.0
    for point in path.points:
        total += point.x * point.count if point.seen else -point.x
    return total + float(len(path.steps)) + path.steps[0][0]


def shared(xs: list[float]) -> list[list[float]]:
    """Two names of one list see the same change, a copy does not."""
    made = xs[:]
    both = [made, made]
    other = made[:]
    made.append(1.25)
    return both + [other]


def failing(x: float) -> float:
    if x > 0.0:
        raise ValueError("x is above zero, it's \"so\" − \u00e9")
    return x


def first_error(xs: list[int], i: int, a: float) -> float:
    """Operands are worked out from the left, so that the first error is the same one."""
    return xs[i] / (1.0 / a) + failing(a) * float(xs[0] // xs[-1])


def last_x(path: Path) -> float:
    return path.points[-1].x


def further(walk: Walk, n: int) -> Walk:
    """A walk stands where a path is asked for, and keeps what it has besides."""
    return Walk(walk.points, walk.steps, walk.nothing, weary=last_x(walk) + walk.weary, points_seen=n)


def a_walk_as_a_path(walk: Walk) -> float:
    path: Path = walk
    return last_x(path)


def arguments_in_order(xs: list[int], a: float) -> Point:
    return Point(x=1.0 / a, count=xs[1], name="b", seen=True)


def natural(x: float) -> list[float]:
    return [exp(x), log(x)]


def raised(x: float, y: float) -> float:
    return power(x, y)


def written(x: float, digits: int, places: int) -> str:
    return join([fixed(x, digits), " / ", fixed(x, places % 6), fixed(float(digits), 0)])
