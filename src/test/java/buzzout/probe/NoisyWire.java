package buzzout.probe;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.Random;

/** Damages one byte in a thousand on its way, either way: changes it, loses it or doubles it. */
final class NoisyWire implements LinkSource {
    private static final int ONE_IN = 1_000;

    private final LinkSource source;
    private final Random random;
    private boolean noisy = true;
    private int damaged;

    NoisyWire(LinkSource source, Random random) {
        this.source = source;
        this.random = random;
    }

    void hush() {
        noisy = false;
    }

    int damaged() {
        return damaged;
    }

    @Override
    public Stopwatch time() {
        return source.time();
    }

    @Override
    public Opened open() throws LinkDown {
        Opened opened = source.open();
        ByteLink link = opened.link();
        return new Opened(opened.port(), new ByteLink() {
            @Override
            public int read(byte[] into, int timeoutMillis) throws LinkDown {
                byte[] clean = new byte[into.length / 2];
                int count = link.read(clean, timeoutMillis);
                byte[] worn = wear(Arrays.copyOf(clean, count));
                System.arraycopy(worn, 0, into, 0, worn.length);
                return worn.length;
            }

            @Override
            public void write(byte[] bytes) throws LinkDown {
                link.write(wear(bytes));
            }

            @Override
            public void close() {
                link.close();
            }
        });
    }

    private byte[] wear(byte[] bytes) {
        ByteArrayOutputStream worn = new ByteArrayOutputStream();
        for (byte next : bytes) {
            if (!noisy || random.nextInt(ONE_IN) > 0) {
                worn.write(next);
                continue;
            }
            damaged++;
            switch (random.nextInt(3)) {
                case 0 -> worn.write(random.nextInt(256));
                case 1 -> worn.writeBytes(new byte[] {next, next});
                default -> {}
            }
        }
        return worn.toByteArray();
    }
}
