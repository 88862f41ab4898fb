package buzzout.report;

import buzzout.journal.LogProblem;
import buzzout.journal.SessionLog;
import buzzout.plan.Plan;
import buzzout.session.KeyState;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;

/**
 * One session as one HTML page for somebody who was not there: a customer, or a helper far away. It needs no script and
 * fetches nothing; its content security policy forbids both.
 */
public final class ReportPage {
    private final SessionLog log;
    private final Outcome outcome;
    private final List<LogProblem> problems;
    private final String program;
    private final Plan plan;
    private final Markup page = new Markup();

    private ReportPage(SessionLog log, Outcome outcome, List<LogProblem> problems, String program) {
        this.log = log;
        this.outcome = outcome;
        this.problems = problems;
        this.program = program;
        this.plan = outcome.plan();
    }

    /**
     * The whole document; the same log gives the same.
     *
     * @param problems what could not be used of the log
     * @param program the version of the program that writes the page
     */
    public static String of(SessionLog log, Outcome outcome, List<LogProblem> problems, String program) {
        return new ReportPage(log, outcome, problems, program).written();
    }

    private String written() {
        page.open("html", "lang", "en").line();
        head();
        page.open("body").line().open("main").line();
        verdict();
        board();
        FindingsSection.put(page, outcome);
        SeenSections.put(page, outcome.session());
        BounceSection.put(page, outcome.session());
        new RepairsSection(log).put(page);
        NotTestedSection.put(page, outcome, problems);
        PlanSection.put(page, plan);
        howItWasTested();
        cautions();
        page.close().line().close().line().close().line();
        return page.toString();
    }

    private void head() {
        String css = ReportStyle.CSS;
        page.open("head").line();
        page.lone("meta", "charset", "utf-8").line();
        page.lone(
                        "meta",
                        "http-equiv",
                        "Content-Security-Policy",
                        "content",
                        "default-src 'none'; style-src 'sha256-" + sha256(css)
                                + "'; base-uri 'none'; form-action 'none'")
                .line();
        page.lone("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
                .line();
        page.lone("meta", "name", "generator", "content", "Buzzout " + program).line();
        page.put("title", Wording.heading(outcome)).line();
        page.style(css).line().close().line();
    }

    private void verdict() {
        page.open("header").line();
        page.put(
                "h1", plan.name() + outcome.unit().map(unit -> ", unit " + unit).orElse(""));
        outcome.started()
                .ifPresent(at -> page.open("p", "class", "when")
                        .text("Session of ")
                        .put("time", Wording.time(at), "datetime", at.toString())
                        .close());
        page.line().open("p", "class", outcome.verdict().isWrong() ? "verdict wrong" : "verdict");
        page.put("span", mark(), "class", "mark", "aria-hidden", "true")
                .text(" " + Wording.verdict(outcome))
                .close();
        page.close().line();
    }

    private String mark() {
        return switch (outcome.verdict()) {
            case GOOD -> String.valueOf(KeyState.GOOD.mark(false));
            case UNFINISHED -> "…";
            case FAULTY, BOUNCING, UNEXPLAINED -> "!";
        };
    }

    private void board() {
        page.open("section", "id", "board").put("h2", "The board").line();
        BoardPicture.put(page, outcome, BoardPicture.Side.CAP);
        StatesTable.put(page, outcome.session());
        if (!outcome.diagnosis().findings().isEmpty()) {
            BoardPicture.put(page, outcome, BoardPicture.Side.SOLDER);
        }
        page.close().line();
    }

    private void howItWasTested() {
        page.open("section", "id", "how")
                .put("h2", "How it was tested")
                .open("dl")
                .line();
        SessionText.facts(log, outcome.session()).forEach(fact -> fact(fact.label(), fact.says()));
        log.header().planFile().ifPresent(file -> fact("Plan", file));
        fact("Log written by", "Buzzout " + log.header().program().orElse("(it does not say which version)"));
        fact("Page written by", "Buzzout " + program);
        page.close().line();
        page.put(
                        "p",
                        "With the session log at hand, buzzout diagnose LOG comes to the same. Probabilities rest on"
                                + " judgement about how often each fault happens, and on what was seen.",
                        "class",
                        "small")
                .close()
                .line();
    }

    private void fact(String label, String says) {
        page.put("dt", label).put("dd", says).line();
    }

    private void cautions() {
        page.open("section", "id", "cautions").put("h2", "Before you solder").open("ul");
        Wording.CAUTIONS.forEach(caution -> page.put("li", caution).line());
        page.close().close().line();
    }

    private static String sha256(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
