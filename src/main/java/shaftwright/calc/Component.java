package shaftwright.calc;

import com.sun.star.lang.XServiceInfo;
import com.sun.star.lib.uno.helper.WeakBase;

/** What each part of the extension tells about itself. */
abstract class Component extends WeakBase implements XServiceInfo {
    private final String implementation;
    private final String[] services;

    Component(String implementation, String[] services) {
        this.implementation = implementation;
        this.services = services.clone();
    }

    @Override
    public String getImplementationName() {
        return implementation;
    }

    @Override
    public boolean supportsService(String name) {
        for (String service : services) {
            if (service.equals(name)) {
                return true;
            }
        }
        return false;
    }

    @Override
    public String[] getSupportedServiceNames() {
        return services.clone();
    }
}
