package buzzout.cli;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.line.Operand;
import buzzout.plan.ExamplePlan;
import buzzout.plan.LayoutFile;
import buzzout.plan.Plan;
import buzzout.plan.PlanFile;
import buzzout.plan.PlanReader;
import buzzout.plan.PlanText;
import buzzout.plan.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A plan and the file that it came from. */
record LoadedPlan(Plan plan, String fileName, String text, boolean builtIn) {
    /** What commands take that are about one plan. */
    static final Operand PLAN = Operand.of("PLAN", "The plan, a TOML file.");

    static LoadedPlan quayside() {
        String text = ExamplePlan.quaysideText();
        Plan plan = PlanReader.read(text, ExamplePlan.QUAYSIDE_FILE_NAME).plan().orElseThrow();
        return new LoadedPlan(plan, ExamplePlan.QUAYSIDE_FILE_NAME, text, true);
    }

    /** Reads a plan that must be without errors. */
    static LoadedPlan from(Surroundings surroundings, String name) throws Failure {
        String text = text(surroundings, name);
        return new LoadedPlan(plan(PlanReader.read(text, name)), name, text, false);
    }

    private static Plan plan(PlanFile file) throws Failure {
        return file.plan()
                .orElseThrow(() -> new Failure(
                        Status.USAGE,
                        file.problems().stream()
                                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                                .map(Problem::toString)
                                .toList()));
    }

    /** Reads a plan to learn from: one that may be wrong, or only a layout, whose rows and columns are made up. */
    static LoadedPlan toLearnFrom(Surroundings surroundings, String name) throws Failure {
        String text = text(surroundings, name);
        Plan plan = plan(LayoutFile.read(text, name));
        String madeUp = "The rows and columns of this plan are made up, from " + name + ", to be learnt.";
        return new LoadedPlan(plan, name, plan.isMadeUp() ? PlanText.of(plan, List.of(madeUp)) : text, false);
    }

    static String text(Surroundings surroundings, String name) throws Failure {
        Path path = surroundings.resolve(name);
        try {
            if (Files.isDirectory(path)) {
                throw new Failure(Status.USAGE, name + ": this is a folder, not a plan.");
            }
            return text(name, Files.newInputStream(path));
        } catch (NoSuchFileException e) {
            throw new Failure(
                    Status.USAGE, name + ": there is no such file; `buzzout new 4x12` writes a plan to start from.");
        } catch (AccessDeniedException e) {
            throw new Failure(Status.USAGE, name + ": you are not allowed to read this file.");
        } catch (CharacterCodingException e) {
            throw new Failure(Status.USAGE, name + ": this file is not UTF-8 text.");
        } catch (IOException e) {
            throw new Failure(Status.USAGE, name + ": cannot read this file: " + e.getMessage());
        }
    }

    private static String text(String name, InputStream opened) throws IOException, Failure {
        try (InputStream in = opened) {
            byte[] bytes = in.readNBytes(PlanReader.MOST_CHARACTERS + 1);
            if (bytes.length > PlanReader.MOST_CHARACTERS) {
                throw new Failure(Status.USAGE, name + ": this file is far too large to be a plan.");
            }
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        }
    }

    /** The faults with these codes, each once. */
    List<Fault> faults(List<String> codes) throws Failure {
        Map<String, Fault> faults = new LinkedHashMap<>();
        for (String code : codes) {
            Fault fault = Catalogue.find(plan, code).orElseThrow(() -> unknown(code));
            faults.put(fault.code(plan), fault);
        }
        return List.copyOf(faults.values());
    }

    private Failure unknown(String code) {
        String list = "`buzzout faults" + (builtIn ? "" : " " + fileName) + "` lists those that it can have.";
        String order = builtIn ? "" : " PLAN comes before --fault.";
        return new Failure(Status.USAGE, plan.name() + " can have no fault \"" + code + "\"; " + list + order);
    }
}
