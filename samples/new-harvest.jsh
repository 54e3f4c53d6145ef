// The new hop harvest: the lots on hand into the year's forty gyles.
day("2026-11-25");
h = harvest();
// 1. What there is, what is wanted, what runs out when, what to contract for next year.
cover(h)
// 2. The year at least cost: one variety is short.
h.plan()
// 3. What may stand in for it? A suggestion, and the brewer's choice.
substitutes("East Kent Golding")
year = h.allow("East Kent Golding", "First Gold");
// 4. The same blend all year, so that no beer jumps when a lot ends.
year.objective("steadiest").plan()
// 5. One gyle, and how its figures came about.
first = year.gyle("001").plan()
explain(first)
