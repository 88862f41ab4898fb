package buzzout.toml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A table while the file is read, and what may still be added to it. */
final class OpenTable {
    /** What made it. */
    private enum Maker {
        /** A header that goes on to a table within it; a header of its own may follow. */
        LONGER_HEADER,
        HEADER,
        /** A name with points in it: names under the same header may add to it, and headers of tables within it. */
        POINTS
    }

    private final Map<String, Value.Setting> settings = new LinkedHashMap<>();
    private final Value.Table value;
    /** Those of its tables that may be added to, of a list of tables the last. */
    private final Map<String, OpenTable> tables = new HashMap<>();

    private final Map<String, List<Value>> lists = new HashMap<>();
    private Maker maker;
    private int section;

    private OpenTable(Spot at, Maker maker, int section) {
        this.maker = maker;
        this.section = section;
        value = new Value.Table(settings, at);
    }

    /** One that stands for itself. */
    static OpenTable at(Spot at) {
        return new OpenTable(at, Maker.HEADER, 0);
    }

    Value.Table value() {
        return value;
    }

    void set(Name name, Value setting) throws Stumble {
        Value.Setting first = settings.putIfAbsent(name.text(), new Value.Setting(name.at(), setting));
        if (first != null) {
            throw Stumble.twice(name, first.at().line());
        }
    }

    /** The table on the way to one whose header is being read. */
    OpenTable onTheWay(Name name) throws Stumble {
        OpenTable there = tables.get(name.text());
        return there == null ? added(name, Maker.LONGER_HEADER, 0) : there;
    }

    /** The table whose header has been read. */
    OpenTable headed(Name name) throws Stumble {
        OpenTable there = tables.get(name.text());
        if (there == null) {
            return added(name, Maker.HEADER, 0);
        }
        if (there.maker != Maker.LONGER_HEADER) {
            throw Stumble.twice(name, there.value.at().line());
        }
        there.maker = Maker.HEADER;
        return there;
    }

    /** One more table of a list of tables. */
    OpenTable listed(Name name) throws Stumble {
        List<Value> list = lists.get(name.text());
        if (list == null) {
            list = new ArrayList<>();
            set(name, new Value.Listed(list, name.at()));
            lists.put(name.text(), list);
        }
        OpenTable table = at(name.at());
        list.add(table.value);
        tables.put(name.text(), table);
        return table;
    }

    /**
     * The table that a name with points in it leads through.
     *
     * @param section tells apart what stands under one header or within one pair of braces
     */
    OpenTable pointed(Name name, int section) throws Stumble {
        OpenTable there = tables.get(name.text());
        if (there == null) {
            return added(name, Maker.POINTS, section);
        }
        if (there.maker == Maker.HEADER || (there.maker == Maker.POINTS && there.section != section)) {
            throw Stumble.twice(name, there.value.at().line());
        }
        there.maker = Maker.POINTS;
        there.section = section;
        return there;
    }

    private OpenTable added(Name name, Maker by, int section) throws Stumble {
        OpenTable table = new OpenTable(name.at(), by, section);
        set(name, table.value);
        tables.put(name.text(), table);
        return table;
    }
}
