"""What the YAML parser finds wrong, in the words of an author."""

from generator.problems import Problem

# Faults that the parser notices further down than where an author has to look.
TOLD_WHERE_IT_BEGAN = ("end of stream", "parsing a flow", "could not find expected ':'")
TAB = ("A tab stands where only spaces may.", "Indent with spaces, never with tabs.")

# What the parser says, and what an author needs to hear: (words in the parser's message, sentence, next step).
BROKEN = (
    (
        "found character that cannot start any token",
        "This text begins with a sign that has a meaning of its own in YAML (@, ` or %).",
        "Put the text in quotes.",
    ),
    (
        "mapping values are not allowed",
        "There is a second colon, or the indentation does not fit the line above.",
        'Put text that holds a colon in quotes: "like: this"; line up the fields of one thing.',
    ),
    (
        "did not find expected key",
        "The indentation does not fit the lines above, or a quote is closed too early.",
        "Line up the fields of one thing; put the whole text in one pair of quotes.",
    ),
    (
        "did not find expected '-' indicator",
        "A list is mixed with something else at the same indentation.",
        "Start every entry of the list with `- ` and line them up.",
    ),
    (
        "could not find expected ':'",
        "A line has no colon after its first word.",
        "Write `field: text`; indent the second line of a long text further than its field.",
    ),
    (
        "found unexpected end of stream",
        "A quote is opened here and never closed.",
        "Close the quote; an apostrophe inside '...' is written twice.",
    ),
    ("did not find expected ',' or", "A bracket [ or { is opened here and not closed.", "Close it with ] or }; put text that holds # in quotes."),
    ("did not find expected node content", "A comma or bracket stands where a value should be.", "Write the value or take the sign away."),
    ("exceeded maximum nesting", "Lists and fields are nested far too deep.", "Write it flatter."),
    ("found undefined tag handle", "Tags (words that start with !) are not used here.", "Put the text in quotes."),
    ("found unknown escape", 'A backslash inside "..." has a meaning of its own.', "Use '...' quotes, or write the backslash twice."),
    ("block sequence entries are not allowed", "A list starts on the line of its field.", "Start the list on the next line."),
    ("did not find expected alphabetic", "A text starts with * or &.", "Put the text in quotes."),
    ("did not find expected <document start>", "There is something after the end of the data.", "Put one thing in a file."),
)  # fmt: skip


def broken(error: Exception, text: str, shown: str) -> Problem:
    """A syntax fault at the line where the parser stumbled; error has PyYAML's marks and messages."""
    said = f"{error.context or ''} {error.problem or ''}"
    opened = error.context_mark and any(words in said for words in TOLD_WHERE_IT_BEGAN)
    mark = error.context_mark if opened else error.problem_mark or error.context_mark
    line = min(mark.line + 1, max(1, len(text.splitlines()))) if mark else 1
    if _indented_by_tab(text, line):
        return Problem(shown, line, *TAB)
    for words, sentence, step in BROKEN:
        if words in said:
            return Problem(shown, line, sentence, step)
    step = "Look at quotes, colons and indentation here and on the line above."
    return Problem(shown, line, "This is not YAML that can be read.", step)


def _indented_by_tab(text: str, line: int) -> bool:
    """True when the white space before the first sign of the line holds a tab."""
    rows = text.splitlines()
    row = rows[line - 1] if 0 < line <= len(rows) else ""
    return "\t" in row[: len(row) - len(row.lstrip())]
