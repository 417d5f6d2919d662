package shaftwright.calc;

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
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.URL;

/** The menu: its commands come here as {@code vnd.shaftwright:…}. */
public final class Menu extends Component
        implements XInitialization, XDispatchProvider, XNotifyingDispatch {
    static final String PROTOCOL = "vnd.shaftwright:";
    static final String[] SERVICES = {"shaftwright.calc.Menu"};

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

    @Override
    public void dispatch(URL url, PropertyValue[] arguments) {
        dispatchWithNotification(url, arguments, null);
    }

    /** Carries the command out; the listener, when there is one, hears what came of it. */
    @Override
    public void dispatchWithNotification(
            URL url, PropertyValue[] arguments, XDispatchResultListener listener) {
        // Calls from LibreOffice come without one, and services are looked up through it.
        Thread.currentThread().setContextClassLoader(Menu.class.getClassLoader());
        Desk desk = new Desk(context, frame);
        Answer answer = answer(url, desk);
        desk.show(answer);
        if (listener != null) {
            short state =
                    answer.isDone() ? DispatchResultState.SUCCESS : DispatchResultState.FAILURE;
            listener.dispatchFinished(new DispatchResultEvent(this, state, answer.text()));
        }
    }

    private static Answer answer(URL url, Desk desk) {
        try {
            MenuCommand command = MenuCommand.ofPath(url.Complete).orElseThrow();
            return command.run(desk);
        } catch (RuntimeException | com.sun.star.uno.Exception e) {
            return Answer.refused("Unexpected fault, nothing was changed: " + e);
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
