// The main job on one screen: a beer from the 5 brl Pilot, on the 30 brl Main, with the hops of 2026, costed to the pint.
day("2026-11-25");
brew("Wickgate Bitter").on("Main").length("30 brl")
