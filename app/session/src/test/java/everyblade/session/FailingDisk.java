package everyblade.session;

import everyblade.record.Disk;
import everyblade.record.LocalDisk;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;

/** A disk that can be made to refuse every write into files below a folder of some name, and to take them again. */
public final class FailingDisk {

    private final LocalDisk disk = new LocalDisk();
    private boolean full;
    private boolean crammed;

    /** From now on nothing longer than a newline can be written to files that are there. */
    public void fill() {
        full = true;
    }

    /** From now on not even a lock can be written. */
    public void cram() {
        crammed = true;
    }

    /** There is room again. */
    public void clear() {
        full = false;
        crammed = false;
    }

    /** The disk as the record sees it. */
    public Disk asDisk() {
        return proxy(Disk.class, disk);
    }

    private <T> T proxy(Class<T> type, Object real) {
        return type.cast(Proxy.newProxyInstance(
                type.getClassLoader(), new Class<?>[] {type}, (self, method, arguments) -> {
                    if (full && method.getName().equals("write") && ((byte[]) arguments[1]).length > 1) {
                        throw new IOException("No space left on device");
                    }
                    if (crammed && method.getName().equals("lock")) {
                        throw new IOException("No space left on device");
                    }
                    try {
                        Object answer = method.invoke(real, arguments);
                        return answer instanceof Disk.OpenFile file
                                        && method.getName().equals("open")
                                ? proxy(Disk.OpenFile.class, file)
                                : answer;
                    } catch (InvocationTargetException thrown) {
                        throw thrown.getCause();
                    }
                }));
    }
}
