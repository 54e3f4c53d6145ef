package costrel.repl;

import java.util.List;
import jdk.jshell.SourceCodeAnalysis;

/**
 * A text cut into the pieces that are evaluated one by one. The end of a line ends a piece if what stands there is whole,
 * so that no semicolons are needed, unless the next line can only be a continuation.
 *
 * @param pieces the whole pieces, in order
 * @param unfinished whether something is left at the end that needs further lines
 */
record Cut(List<Piece> pieces, boolean unfinished) {

    /**
     * Cuts a text.
     *
     * @param analysis knows when an input is whole
     * @param source the text, its lines ended by line feeds
     */
    static Cut of(SourceCodeAnalysis analysis, String source) {
        return new Cutter(analysis::analyzeCompletion).cut(source);
    }
}
