package buzzout.plan;

/**
 * Where a key's end is soldered to its row or to its column.
 *
 * @param key index into the plan's keys
 */
public record Joint(int key, NetKind kind) {
    /** The net, by its index in the plan. */
    public int net(Plan plan) {
        return plan.keys().get(key).net(kind);
    }

    /**
     * Its number, such as {@code R2.3}: the third joint of R2 in solder order, as the plan lists them, branches last.
     * Drawings, checklists and findings all use it.
     */
    public String number(Plan plan) {
        Net on = plan.nets().get(net(plan));
        return on.number(on.jointOf(key));
    }
}
