"""The one question that must be answered under any Python: is this one new enough?"""

OLDEST = (3, 11)


def complaint(version, executable):
    """One line that says why this Python will not do and what to do next, or an empty string.

    version is like sys.version_info; executable is the path of the running Python.
    """
    if tuple(version[:2]) >= OLDEST:
        return ""
    return (
        "Python %d.%d (%s) is too old; the guide needs %d.%d or newer. Install a newer Python, then run the same "
        "command with it, for example `python3.12 -m generator serve`."
        % (version[0], version[1], executable, OLDEST[0], OLDEST[1])
    )
