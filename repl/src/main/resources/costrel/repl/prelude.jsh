// What the console knows before the first input. Every instruction ends in a semicolon.
import java.math.*;
import java.nio.file.*;
import java.time.*;
import java.util.*;
import java.util.function.*;
import java.util.stream.*;
import static costrel.repl.Desk.*;
import static costrel.repl.Verbs.*;
import costrel.brewery.*;
import costrel.cost.*;
import costrel.harvest.*;
import costrel.hops.*;
import costrel.measure.*;
import costrel.plant.*;
import costrel.recipe.*;
import costrel.report.*;
import costrel.scaling.*;
import costrel.wort.*;
