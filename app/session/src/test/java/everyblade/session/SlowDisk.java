package everyblade.session;

import everyblade.record.Disk;
import everyblade.record.LocalDisk;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.util.concurrent.Semaphore;

/** A disk on which nothing becomes safe before the test lets it, once for each force of a file. */
public final class SlowDisk {

    private static final int ALL = Integer.MAX_VALUE / 2;

    private final LocalDisk disk = new LocalDisk();
    private final Semaphore safe = new Semaphore(ALL);

    /** From now on every force waits. */
    public void hold() {
        safe.drainPermits();
    }

    /** Lets one force through. */
    public void letOne() {
        safe.release();
    }

    /** As fast as any from now on. */
    public void letAll() {
        safe.release(ALL);
    }

    /** The disk as the record sees it. */
    public Disk asDisk() {
        return proxy(Disk.class, disk);
    }

    private <T> T proxy(Class<T> type, Object real) {
        return type.cast(Proxy.newProxyInstance(
                type.getClassLoader(), new Class<?>[] {type}, (self, method, arguments) -> {
                    if (method.getName().equals("force")) {
                        safe.acquireUninterruptibly();
                    }
                    try {
                        Object answer = method.invoke(real, arguments);
                        return answer instanceof Disk.OpenFile file ? proxy(Disk.OpenFile.class, file) : answer;
                    } catch (InvocationTargetException thrown) {
                        throw thrown.getCause();
                    }
                }));
    }
}
