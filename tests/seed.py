"""The seed of all random inputs; PARITY_SEED in the environment changes it. Every run prints it, and a deep run records it."""

import os

SEED = os.environ.get("PARITY_SEED", "2025-11-24")
