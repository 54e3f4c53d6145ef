package costrel.brewery;

import com.code_intelligence.jazzer.junit.FuzzTest;
import costrel.Answered;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/** Any bytes as the text of an amount, through everything that reads one. */
class AmountsFuzzTest {

    static Stream<byte[]> amounts() throws IOException {
        return Trials.amounts().stream().map(text -> text.getBytes(StandardCharsets.UTF_8));
    }

    @MethodSource("amounts")
    @FuzzTest(maxDuration = "")
    void an_amount_is_read_or_refused(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        for (Consumer<String> reader : Trials.READERS) {
            Answered.byValueOrRefusal(() -> reader.accept(text), () -> text);
        }
    }
}
