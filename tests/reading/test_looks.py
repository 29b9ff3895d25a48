"""A look is read with its pictures, marks and what is said, each mark knowing its line and its number."""


def test_a_look_is_read(good):
    """Everything is there, in order; a mark has the line on which it stands."""
    look = good.looks["spur_up_close"]
    assert [scene.id for scene in look.scenes] == ["before"]
    assert [(mark.id, mark.line) for mark in look.marks] == [("lower", 8), ("upper", 9)]
    assert look.says[0].standing == "common_practice" and look.see == ("spur_up_close",)


def test_numbers_are_the_places_in_the_list(good):
    """From 1; what is not named has none."""
    look = good.looks["spur_up_close"]
    assert [look.number(name) for name in ("lower", "upper", "trunk")] == [1, 2, 0]
