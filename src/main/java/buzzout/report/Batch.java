package buzzout.report;

import buzzout.circuit.FaultKind;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * All units of one board that sessions were kept of.
 *
 * @param units by their marks
 * @param unmarked sessions that name no unit; they count for none
 */
public record Batch(String board, List<UnitHistory> units, List<WeighedLog> unmarked) {
    /**
     * A place that failed more than once: on several units, or again on one after it had been gone.
     *
     * @param units the marks of the units, each once
     * @param times on all of them together
     */
    public record Again(String code, String says, List<String> units, int times) {
        public Again {
            units = List.copyOf(units);
        }
    }

    public Batch {
        units = List.copyOf(units);
        unmarked = List.copyOf(unmarked);
    }

    /** One batch for each board, by its name. */
    public static List<Batch> of(List<WeighedLog> logs) {
        Map<String, List<WeighedLog>> byBoard = new TreeMap<>();
        logs.forEach(log -> byBoard.computeIfAbsent(log.outcome().plan().name(), name -> new ArrayList<>())
                .add(log));
        return byBoard.entrySet().stream()
                .map(entry -> ofBoard(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static Batch ofBoard(String board, List<WeighedLog> logs) {
        Map<String, List<WeighedLog>> byUnit = new TreeMap<>();
        List<WeighedLog> unmarked = new ArrayList<>();
        for (WeighedLog log : logs) {
            log.outcome()
                    .unit()
                    .ifPresentOrElse(
                            unit -> byUnit.computeIfAbsent(unit, mark -> new ArrayList<>())
                                    .add(log),
                            () -> unmarked.add(log));
        }
        List<UnitHistory> units = byUnit.entrySet().stream()
                .map(entry -> new UnitHistory(entry.getKey(), entry.getValue()))
                .toList();
        return new Batch(board, units, unmarked);
    }

    long count(UnitHistory.Standing standing) {
        return units.stream().filter(unit -> unit.standing() == standing).count();
    }

    long passed() {
        return count(UnitHistory.Standing.PASSED) + count(UnitHistory.Standing.PASSED_AT_FIRST_TRY);
    }

    /** How many faults of each kind were found, each fault of a unit once; kinds of which there were none are left out. */
    Map<FaultKind, Integer> faultsByKind() {
        Map<FaultKind, Integer> counts = new EnumMap<>(FaultKind.class);
        units.forEach(unit -> unit.faults().forEach(fault -> counts.merge(fault.kind(), 1, Integer::sum)));
        return counts;
    }

    /** What failed again, most often first. */
    List<Again> again() {
        Map<String, Again> byCode = new LinkedHashMap<>();
        for (UnitHistory unit : units) {
            for (FaultFound fault : unit.faults()) {
                Again now = new Again(fault.code(), fault.says(), List.of(unit.unit()), fault.times());
                byCode.merge(fault.code(), now, Batch::both);
            }
        }
        return byCode.values().stream()
                .filter(place -> place.times() > 1)
                .sorted((one, other) -> Integer.compare(other.times(), one.times()))
                .toList();
    }

    private static Again both(Again one, Again other) {
        List<String> units = new ArrayList<>(one.units());
        units.addAll(other.units());
        return new Again(one.code(), one.says(), units, one.times() + other.times());
    }
}
