package costrel.brewery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import costrel.report.CostText;
import costrel.report.GyleText;
import costrel.report.HarvestText;
import costrel.report.JobText;
import costrel.report.PricingText;
import costrel.report.RangeText;
import costrel.report.RiskText;
import costrel.report.TextForm;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** One brewery for a whole program, such as one that answers many people at once. */
@Timeout(120)
class ManyThreadsTest {

    private static final int THREADS = 8;
    private static final int ROUNDS = 3;
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    /** What is asked of a brewery, each with its answer in full. */
    private static Map<String, Callable<String>> questions(Brewery brewery) {
        Map<String, Callable<String>> questions = new LinkedHashMap<>();
        for (String beer : brewery.recipes().keySet()) {
            Brew brew = brewery.brew(beer).on("Main").length("24 brl").day(DAY);
            questions.put(beer + " gyle", () -> TextForm.of(GyleText.sheet(brew.gyle())));
            questions.put(beer + " cost", () -> TextForm.of(CostText.sheet(brew.cost())));
            questions.put(beer + " job", () -> TextForm.of(JobText.sheet(brew)));
            questions.put(
                    beer + " prices",
                    () -> TextForm.of(PricingText.sheet(brew.pricing().margin("40 %"))));
            questions.put(
                    beer + " risk",
                    () -> TextForm.of(
                            RiskText.sheet(brew.risk().price("hops", "10 %").draws(200))));
        }
        questions.put("range", () -> TextForm.of(RangeText.sheet(PricedRange.of(brewery, DAY))));
        questions.put(
                "harvest", () -> TextForm.of(HarvestText.sheet(brewery.harvest().plan())));
        return questions;
    }

    @Test
    void eight_threads_get_the_answers_that_one_gets() throws Exception {
        long seed = Long.getLong("seed", 18690813);
        Map<String, String> alone = new LinkedHashMap<>();
        for (Map.Entry<String, Callable<String>> question :
                questions(Brewery.open(LanternfoldTest.FOLDER)).entrySet()) {
            alone.put(question.getKey(), question.getValue().call());
        }
        assertFalse(alone.isEmpty());
        // Opened anew, so that whatever is worked out on first use is worked out by all of them at once.
        Map<String, Callable<String>> questions = questions(Brewery.open(LanternfoldTest.FOLDER));
        CountDownLatch go = new CountDownLatch(1);
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        List<Future<Map<String, String>>> answers = new ArrayList<>();
        try {
            for (int thread = 0; thread < THREADS; thread++) {
                Random random = new Random(seed + thread);
                answers.add(threads.submit(() -> {
                    List<String> order = new ArrayList<>(questions.keySet());
                    Map<String, String> own = new LinkedHashMap<>();
                    go.await();
                    for (int round = 0; round < ROUNDS; round++) {
                        java.util.Collections.shuffle(order, random);
                        for (String question : order) {
                            String answer = Objects.requireNonNull(questions.get(question))
                                    .call();
                            String before = own.put(question, answer);
                            assertEquals(answer, before == null ? answer : before);
                        }
                    }
                    return own;
                }));
            }
            go.countDown();
            for (Future<Map<String, String>> answer : answers) {
                assertEquals(alone, answer.get(100, TimeUnit.SECONDS), "-Dseed=" + seed);
            }
        } finally {
            threads.shutdownNow();
        }
    }
}
