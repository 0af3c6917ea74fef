"""Due dates, readings, verdicts and what is affected."""
