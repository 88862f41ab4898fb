package buzzout.probe;

import buzzout.circuit.Pair;

/** Bodies of lines to messages. */
final class ProbeMessages {
    private static final long MOST_COUNT = 0xFFFF_FFFFL;
    private static final int MOST_DIGITS = 10;

    private ProbeMessages() {}

    /** Never fails: what makes no sense is {@link ProbeMessage.Malformed} or {@link ProbeMessage.Unknown}. */
    static ProbeMessage parse(String body) {
        String[] fields = body.split(" ", -1);
        try {
            return switch (fields[0]) {
                case "iam" -> iam(fields);
                case "ok" -> new ProbeMessage.Ok(body);
                case "no" -> no(fields);
                case "+", "-" -> {
                    expect(fields, 5);
                    yield new ProbeMessage.Change(
                            count(fields[1]), count(fields[2]), fields[0].equals("+"), pair(fields[3], fields[4]));
                }
                case "=" -> {
                    expect(fields, 3);
                    yield new ProbeMessage.Conducts(pair(fields[1], fields[2]));
                }
                case "full" -> {
                    expect(fields, 4);
                    yield new ProbeMessage.Full(count(fields[1]), count(fields[2]), small(fields[3]));
                }
                case "beat" -> {
                    expect(fields, 5);
                    yield new ProbeMessage.Beat(count(fields[1]), count(fields[2]), count(fields[3]), small(fields[4]));
                }
                case "lost" -> {
                    expect(fields, 3);
                    yield new ProbeMessage.Lost(count(fields[1]), count(fields[2]));
                }
                default -> new ProbeMessage.Unknown(body);
            };
        } catch (IllegalArgumentException senseless) {
            return new ProbeMessage.Malformed(body);
        }
    }

    private static ProbeMessage iam(String[] fields) {
        expect(fields, 2);
        int protocol = small(fields[1]);
        if (protocol != ProbeMessage.PROTOCOL) {
            return new ProbeMessage.OtherProtocol(protocol);
        }
        expect(fields, 6);
        return new ProbeMessage.Iam(new Identity(protocol, fields[2], fields[3], small(fields[4]), count(fields[5])));
    }

    private static ProbeMessage no(String[] fields) {
        expect(fields, 3);
        return new ProbeMessage.No(fields[1], fields[2], fields.length > 3 ? fields[3] : "");
    }

    /** Newer probes may say more at the end of a line. */
    private static void expect(String[] fields, int count) {
        if (fields.length < count) {
            throw new IllegalArgumentException(fields.length + " fields instead of " + count);
        }
    }

    private static Pair pair(String low, String reads) {
        Pair pair = new Pair(small(low), small(reads));
        if (pair.low() == pair.reads() || Math.max(pair.low(), pair.reads()) >= Long.SIZE) {
            throw new IllegalArgumentException("not a pair");
        }
        return pair;
    }

    private static int small(String digits) {
        return (int) Math.min(count(digits), Integer.MAX_VALUE);
    }

    /** An unsigned number of up to 32 bits, decimal, without sign or leading zeros. */
    private static long count(String digits) {
        boolean canBe = !digits.isEmpty()
                && digits.length() <= MOST_DIGITS
                && (digits.length() == 1 || digits.charAt(0) != '0');
        long count = canBe ? 0 : Long.MAX_VALUE;
        for (int i = 0; canBe && i < digits.length(); i++) {
            char digit = digits.charAt(i);
            canBe = digit >= '0' && digit <= '9';
            count = 10 * count + digit - '0';
        }
        if (!canBe || count > MOST_COUNT) {
            throw new IllegalArgumentException("not a number");
        }
        return count;
    }
}
