"""Wrenches, specs, settings and reach."""
