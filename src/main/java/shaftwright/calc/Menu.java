package shaftwright.calc;

import com.sun.star.awt.XCallback;
import com.sun.star.awt.XRequestCallback;
import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.DispatchDescriptor;
import com.sun.star.frame.DispatchResultEvent;
import com.sun.star.frame.DispatchResultState;
import com.sun.star.frame.XDispatch;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.frame.XDispatchResultListener;
import com.sun.star.frame.XFrame;
import com.sun.star.frame.XNotifyingDispatch;
import com.sun.star.frame.XStatusListener;
import com.sun.star.lang.XInitialization;
import com.sun.star.uno.Any;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.URL;
import java.io.IOException;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import shaftwright.jobs.Failure;

/** The menu: its commands come here as {@code vnd.shaftwright:…}. */
public final class Menu extends Component
        implements XInitialization, XDispatchProvider, XNotifyingDispatch {
    static final String PROTOCOL = "vnd.shaftwright:";
    static final String[] SERVICES = {"shaftwright.calc.Menu"};

    /** Windows that a command is at work in. */
    private static final Set<XFrame> AT_WORK = ConcurrentHashMap.newKeySet();

    private final XComponentContext context;
    private XFrame frame;

    public Menu(XComponentContext context) {
        super(Menu.class.getName(), SERVICES);
        this.context = context;
    }

    @Override
    public void initialize(Object[] arguments) {
        if (arguments.length > 0) {
            frame = UnoRuntime.queryInterface(XFrame.class, arguments[0]);
        }
    }

    @Override
    public XDispatch queryDispatch(URL url, String target, int flags) {
        return MenuCommand.ofPath(url.Complete).isPresent() ? this : null;
    }

    @Override
    public XDispatch[] queryDispatches(DispatchDescriptor[] asked) {
        XDispatch[] found = new XDispatch[asked.length];
        for (int i = 0; i < asked.length; i++) {
            found[i] = queryDispatch(asked[i].FeatureURL, asked[i].FrameName, asked[i].SearchFlags);
        }
        return found;
    }

    /** Carries a command of the menu out once the menu is closed. */
    @Override
    public void dispatch(URL url, PropertyValue[] arguments) {
        XCallback command = nothing -> dispatchWithNotification(url, arguments, null);
        try {
            Object later =
                    context.getServiceManager()
                            .createInstanceWithContext("com.sun.star.awt.AsyncCallback", context);
            UnoRuntime.queryInterface(XRequestCallback.class, later).addCallback(command, Any.VOID);
        } catch (com.sun.star.uno.Exception e) {
            command.notify(Any.VOID);
        }
    }

    /** Carries the command out; the listener, when there is one, hears what came of it. */
    @Override
    public void dispatchWithNotification(
            URL url, PropertyValue[] arguments, XDispatchResultListener listener) {
        // Calls from LibreOffice come without one, and services are looked up through it.
        Thread.currentThread().setContextClassLoader(Menu.class.getClassLoader());
        Desk desk = new Desk(context, frame, arguments);
        Answer answer = inTurn(url, desk);
        if (listener != null) {
            short state =
                    answer.isDone() ? DispatchResultState.SUCCESS : DispatchResultState.FAILURE;
            listener.dispatchFinished(new DispatchResultEvent(this, state, answer.all()));
        }
        desk.show(answer);
    }

    /** LibreOffice lets menus be opened while a command tells how far it is. */
    private Answer inTurn(URL url, Desk desk) {
        if (frame == null) {
            return answer(url, desk);
        }
        if (!AT_WORK.add(frame)) {
            return Answer.refused("Still at work: wait for its end.");
        }
        try {
            return answer(url, desk);
        } finally {
            AT_WORK.remove(frame);
        }
    }

    private static Answer answer(URL url, Desk desk) {
        try {
            return MenuCommand.ofPath(url.Complete).orElseThrow().run(desk);
        } catch (RuntimeException | IOException | com.sun.star.uno.Exception e) {
            return Answer.refused(Failure.message(e)).withPage(desk.journal().lines());
        } finally {
            desk.journal().rest();
        }
    }

    @Override
    public void addStatusListener(XStatusListener listener, URL url) {
        // Every command is always there.
    }

    @Override
    public void removeStatusListener(XStatusListener listener, URL url) {
        // None is kept.
    }
}
