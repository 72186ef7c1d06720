package counterstep.toolchange;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;

/** What a benchmark takes as time. */
enum Clock {
    /** As on the wall: right on a machine that does nothing else. */
    WALL {
        @Override
        long nanos() {
            return System.nanoTime();
        }
    },

    /**
     * What this process has had of the processors, all its threads added up, in steps of 10 ms:
     * right on a machine that is busy with other work.
     */
    PROCESSOR {
        @Override
        long nanos() {
            return SYSTEM.getProcessCpuTime();
        }
    },

    /** The same of those threads alone that run Java and still do, in fine steps. */
    THREADS {
        @Override
        long nanos() {
            long sum = 0;
            for (long thread : THREADS_NOW.getAllThreadIds()) {
                sum += Math.max(0, THREADS_NOW.getThreadCpuTime(thread));
            }
            return sum;
        }
    };

    private static final OperatingSystemMXBean SYSTEM =
            ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

    private static final ThreadMXBean THREADS_NOW = ManagementFactory.getThreadMXBean();

    /** From some moment on. */
    abstract long nanos();
}
