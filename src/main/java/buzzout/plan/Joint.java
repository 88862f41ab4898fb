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

    /** Its place in the net's solder order. */
    public int place(Plan plan) {
        return plan.nets().get(net(plan)).jointOf(key);
    }

    /** Such as {@code R2 at E, the third joint from the left (solder side)}. */
    public String says(Plan plan) {
        Net on = plan.nets().get(net(plan));
        return on.name() + " at " + plan.keys().get(key).spoken() + ", the "
                + SolderSide.joint(plan, on, on.jointOf(key)) + " (solder side)";
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
