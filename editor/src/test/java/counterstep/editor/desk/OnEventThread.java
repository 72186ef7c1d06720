package counterstep.editor.desk;

import java.lang.reflect.Method;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.InvocationInterceptor;
import org.junit.jupiter.api.extension.ReflectiveInvocationContext;

/** Runs the tests of a class on the event thread, where the desk is used. */
public final class OnEventThread implements InvocationInterceptor {
    @Override
    public void interceptTestMethod(
            Invocation<Void> invocation,
            ReflectiveInvocationContext<Method> context,
            ExtensionContext extension)
            throws Throwable {
        Throwable[] thrown = new Throwable[1];
        SwingUtilities.invokeAndWait(
                () -> {
                    try {
                        invocation.proceed();
                    } catch (Throwable failure) {
                        thrown[0] = failure;
                    }
                });
        if (thrown[0] != null) {
            throw thrown[0];
        }
    }
}
