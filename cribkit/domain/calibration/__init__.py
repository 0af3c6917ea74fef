"""Calibration of torque wrenches: due dates, readings, verdicts, what is affected, intervals."""
