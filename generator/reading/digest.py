"""Digests of plain data, independent of the order of files and fields and of how numbers are written."""

import hashlib
import json

VERSION_LENGTH = 10
ORIGINAL_LENGTH = 12
NOT_ADVICE = ("ids", "block")


def digest(data: object, length: int = ORIGINAL_LENGTH) -> str:
    """The first hex digits of the sha256 over the data as sorted, compact JSON; 3 and 3.0 are the same number."""
    text = json.dumps(_plain(data), sort_keys=True, separators=(",", ":"), ensure_ascii=False)
    return hashlib.sha256(text.encode("utf-8")).hexdigest()[:length]


def rules_version(items: dict[tuple[str, str], object]) -> str:
    """The version of a rulebook from the plain data of its items by (kind, id).

    The ledger of ids and the demo blocks are left out: they change no advice, so old links stay good.
    """
    kept = {f"{kind}/{name}": data for (kind, name), data in items.items() if kind not in NOT_ADVICE}
    return digest(kept, VERSION_LENGTH)


def _plain(data: object) -> object:
    """The data with every whole decimal as a whole number."""
    if isinstance(data, dict):
        return {key: _plain(part) for key, part in data.items()}
    if isinstance(data, list):
        return [_plain(part) for part in data]
    if isinstance(data, float) and data.is_integer():
        return int(data)
    return data
