import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.XServiceInfo;
import com.sun.star.lang.XSingleComponentFactory;
import com.sun.star.lib.uno.helper.Factory;
import com.sun.star.lib.uno.helper.WeakBase;

/**
 * An add-in whose functions hand back their first argument or a number: what is left is the way
 * there and back.
 */
public final class Bridge extends WeakBase implements XBridge, XServiceInfo {
    private static final String[] SERVICES = {"com.sun.star.sheet.AddIn", "BRIDGE"};

    public static XSingleComponentFactory __getComponentFactory(String implementation) {
        return implementation.equals("Bridge")
                ? Factory.createComponentFactory(Bridge.class, SERVICES)
                : null;
    }

    @Override
    public double nothing() {
        return 1;
    }

    @Override
    public double numbers(double reach, double rise, double foreaft) {
        return reach;
    }

    @Override
    public Object empty(Object reach, Object rise, Object foreaft, Object unit) {
        return reach;
    }

    @Override
    public Object emptyindocument(
            XPropertySet document, Object reach, Object rise, Object foreaft, Object unit) {
        return reach;
    }

    @Override
    public String getImplementationName() {
        return "Bridge";
    }

    @Override
    public boolean supportsService(String name) {
        return name.equals(SERVICES[0]) || name.equals(SERVICES[1]);
    }

    @Override
    public String[] getSupportedServiceNames() {
        return SERVICES.clone();
    }
}
