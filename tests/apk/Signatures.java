import java.io.FileInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.codehaus.mojo.animal_sniffer.SignatureChecker;
import org.codehaus.mojo.animal_sniffer.logging.Logger;

/**
 * Signatures SIGNATURE FOLDER: whether every class in the folder calls only what the signature lists (the public API of
 * Android 14 as gummy-bears publishes it) or what is in the folder itself. Prints what it does not find.
 */
public final class Signatures {
    /** Parts of JNA that speak of a desktop's windows; JNA never reaches them where there are none. */
    private static final Set<String> NOT_ON_A_PHONE = Set.of("java.awt", "java.awt.*", "sun.security.action");

    public static void main(String[] arguments) throws Exception {
        Set<String> faults = new TreeSet<>();
        Logger logger = new Logger() {
            public void info(String message) {}
            public void info(String message, Throwable fault) {}
            public void debug(String message) {}
            public void debug(String message, Throwable fault) {}
            public void warn(String message) {}
            public void warn(String message, Throwable fault) {}
            public void error(String message) { faults.add(message); }
            public void error(String message, Throwable fault) { faults.add(message); }
        };
        List<Path> classes;
        try (Stream<Path> files = Files.walk(Path.of(arguments[1]))) {
            classes = files.filter(file -> file.toString().endsWith(".class")).collect(Collectors.toList());
        }
        Set<String> own = new TreeSet<>(NOT_ON_A_PHONE);
        for (Path file : classes) {
            Path folder = Path.of(arguments[1]).relativize(file).getParent();
            own.add(folder.toString().replace('/', '.') + ".*");
        }
        try (FileInputStream signature = new FileInputStream(arguments[0])) {
            SignatureChecker checker = new SignatureChecker(signature, own, logger);
            checker.setSourcePath(List.of());
            for (Path file : classes) checker.process(file.toFile());
        }
        faults.forEach(System.out::println);
        System.out.println(classes.size() + " classes looked at, " + faults.size() + " faults");
        System.exit(faults.isEmpty() && classes.size() > 50 ? 0 : 1);
    }
}
