package roundwright.desktop;

import java.awt.EventQueue;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.InvocationInterceptor;
import org.junit.jupiter.api.extension.ReflectiveInvocationContext;

/** Runs every test of a class, and what prepares it, on the event thread, as a window would: components are not made for others. */
public final class OnEventThread implements InvocationInterceptor {
    @Override
    public void interceptBeforeEachMethod(
            Invocation<Void> invocation, ReflectiveInvocationContext<Method> called, ExtensionContext context)
            throws Throwable {
        run(invocation);
    }

    @Override
    public void interceptTestMethod(
            Invocation<Void> invocation, ReflectiveInvocationContext<Method> called, ExtensionContext context)
            throws Throwable {
        run(invocation);
    }

    @Override
    public void interceptTestTemplateMethod(
            Invocation<Void> invocation, ReflectiveInvocationContext<Method> called, ExtensionContext context)
            throws Throwable {
        run(invocation);
    }

    private static void run(Invocation<Void> invocation) throws Throwable {
        Throwable[] thrown = new Throwable[1];
        try {
            EventQueue.invokeAndWait(() -> {
                try {
                    invocation.proceed();
                } catch (Throwable failure) {
                    thrown[0] = failure;
                }
            });
        } catch (InvocationTargetException failure) {
            throw failure.getCause();
        }
        if (thrown[0] != null) {
            throw thrown[0];
        }
    }
}
