package buzzout.e2e;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** The jar holds our classes and the libraries of its own list: with the licences and the hashes that it states. */
class SupplyIT {
    private static final Path JAR = Path.of(System.getProperty("buzzout.jar", "target/buzzout.jar"));

    private JarFile jar;

    /** A line of META-INF/DEPENDENCIES.txt. */
    record Library(String name, String licence, List<String> texts, String hash) {
        static Library of(String line) {
            String[] parts = line.split(" \\| ", -1);
            return new Library(parts[0], parts[1], List.of(parts[2].split(" ", -1)), parts[3]);
        }

        String stated() {
            return name + " | " + licence + " | " + hash;
        }
    }

    @BeforeEach
    void open() throws IOException {
        jar = new JarFile(JAR.toFile());
    }

    @AfterEach
    void close() throws IOException {
        jar.close();
    }

    @Test
    void each_class_is_ours_or_comes_unchanged_from_a_library_of_the_list() throws Exception {
        List<Library> found = new ArrayList<>();
        Map<Path, Integer> classes = classesOfOthers();
        for (Path library : classes.keySet()) {
            found.add(inRepository(library));
        }
        List<String> stated = listed().stream().map(Library::stated).sorted().toList();
        assertEquals(
                String.join("\n", stated),
                String.join("\n", found.stream().map(Library::stated).sorted().toList()),
                "what the jar holds; if that is meant so, and you have looked at it,"
                        + " src/main/resources/META-INF/DEPENDENCIES.txt is to say the same");
        System.out.printf(
                "figure: classes of libraries in the jar, each as published | %d of %d libraries | the list's %d%n",
                classes.values().stream().mapToInt(Integer::intValue).sum(), found.size(), stated.size());
    }

    @Test
    void the_text_of_each_licence_is_in_the_jar() throws IOException {
        for (Library library : listed()) {
            for (String text : library.texts()) {
                String licence = text("META-INF/licences/" + text);
                assertTrue(
                        licence.contains(text.startsWith("BSD") ? "Redistributions in binary form" : "TERMS AND COND")
                                || licence.contains("GNU LESSER GENERAL PUBLIC LICENSE"),
                        text);
            }
        }
    }

    /** The jars on the class path that the classes not our own are from, and how many from each. */
    private Map<Path, Integer> classesOfOthers() throws IOException, URISyntaxException {
        Map<Path, Integer> jars = new LinkedHashMap<>();
        for (JarEntry entry : Collections.list(jar.entries())) {
            if (entry.getName().endsWith(".class") && !entry.getName().startsWith("buzzout/")) {
                URL original =
                        original(entry.getName()).orElseThrow(() -> new AssertionError(entry + " is from nowhere"));
                try (InputStream ours = jar.getInputStream(entry);
                        InputStream theirs = original.openStream()) {
                    assertArrayEquals(theirs.readAllBytes(), ours.readAllBytes(), entry::getName);
                }
                URL from = ((JarURLConnection) original.openConnection()).getJarFileURL();
                jars.merge(Path.of(from.toURI()), 1, Integer::sum);
            }
        }
        assertFalse(jars.isEmpty());
        return jars;
    }

    private static Optional<URL> original(String name) throws IOException {
        return Collections.list(SupplyIT.class.getClassLoader().getResources(name)).stream()
                .filter(each -> !each.toString().contains("/" + JAR.getFileName() + "!"))
                .findFirst();
    }

    /** What Maven's local repository says of a jar: its coordinates are its path, its licences are in the POM beside. */
    private static Library inRepository(Path file) throws Exception {
        int names = file.getNameCount();
        Path version = file.getName(names - 2);
        Path artifact = file.getName(names - 3);
        Path pom = file.resolveSibling(artifact + "-" + version + ".pom");
        Element project = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(pom.toFile())
                .getDocumentElement();
        return new Library(
                word(project, "groupId") + ":" + artifact + ":" + version, licence(project), List.of(), hash(file));
    }

    /** A project's own word, or the one of its parent. */
    private static String word(Element project, String name) {
        return child(project, name)
                .or(() -> child((Element) project.getElementsByTagName("parent").item(0), name))
                .orElseThrow();
    }

    private static Optional<String> child(Element in, String name) {
        for (Node child = in.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child.getNodeName().equals(name)) {
                return Optional.of(child.getTextContent());
            }
        }
        return Optional.empty();
    }

    private static String licence(Element project) {
        NodeList licences = project.getElementsByTagName("license");
        return IntStream.range(0, licences.getLength())
                .mapToObj(at -> child((Element) licences.item(at), "name").orElseThrow())
                .collect(Collectors.joining(", or "));
    }

    private static String hash(Path file) throws IOException, NoSuchAlgorithmException {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            in.transferTo(OutputStream.nullOutputStream());
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private List<Library> listed() throws IOException {
        return text("META-INF/DEPENDENCIES.txt")
                .lines()
                .filter(line -> line.contains(" | "))
                .map(Library::of)
                .toList();
    }

    private String text(String name) throws IOException {
        try (InputStream in = jar.getInputStream(jar.getJarEntry(name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
