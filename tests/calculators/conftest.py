"""Property tests here have no clock: a busy machine is no fault."""

from hypothesis import settings

settings.register_profile("no clock", deadline=None)
settings.load_profile("no clock")
