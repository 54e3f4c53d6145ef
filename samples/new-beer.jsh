// The owner's walk: a beer that has not been brewed yet, from its cost to its price, to the bar, and to next year.
day("2026-11-25");
pale = brew("Trimwick Pale").on("Main").length("30 brl");
// 1. What will a pint cost in cask, keg and bottle, and what is to be charged for a margin of 55 %?
prices = pale.pricing().margin("55 %");
prices
// 2. What does that mean on the bar, at the pub's gross profit of 60 %?
prices.pub("60 %")
// 3. The firkin at £84: how many pay for £48,000 of fixed cost, and what do discounts leave?
prices.breakEven("firkin", "£84.00", "£48000")
prices.discounts("firkin", "£84.00", "10: 5 %; 50: 10 %")
// 4. What would it cost at another strength? Duty steps at 3.5 %.
prices.strengths("3.2 %", "4.8 %", "0.4 %")
// 5. What is a point of each loss worth?
prices.losses()
// 6. Why is the bitter dearer than in spring?
bitter = brew("Wickgate Bitter").on("Main").length("30 brl");
compare(bitter.day("2026-04-14"), bitter)
// 7. What could next year do to the new beer, and to a margin of 54 %?
study = risk(pale).price("mashed goods", "10 %").price("hops", "20 %").alpha("15 %").efficiency("2 %").loss("1 %");
study.correlated("mashed goods", "hops", 0.5).target("firkin", "£84.00", "54 %").seed(7)
// 8. Which beers earn their tank time?
range()
