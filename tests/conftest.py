"""What every test shares: a calm hypothesis profile and an environment without the user's settings."""

import os

import pytest
from hypothesis import HealthCheck, settings

settings.register_profile("suite", max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
settings.load_profile("suite")


@pytest.fixture(autouse=True)
def no_settings_of_the_user(monkeypatch: pytest.MonkeyPatch) -> None:
    """A test sees no CRIBKIT_ variable of the person who runs it."""
    for name in [name for name in os.environ if name.startswith("CRIBKIT_")]:
        monkeypatch.delenv(name)


@pytest.fixture(autouse=True)
def a_cache_of_the_tests_own(monkeypatch: pytest.MonkeyPatch, tmp_path_factory: pytest.TempPathFactory) -> None:
    """No test reads or writes the cache of the person who runs it."""
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path_factory.getbasetemp() / "cache"))
