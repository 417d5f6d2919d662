package shaftwright.calc;

import com.sun.star.lang.XSingleComponentFactory;
import com.sun.star.lib.uno.helper.Factory;

/** Where LibreOffice asks for the extension's parts, as the jar's manifest says. */
public final class Registration {
    private Registration() {}

    /** The factory of the named part, null when it is none of ours: UNO's convention. */
    @SuppressWarnings({"MethodName", "PMD.MethodNamingConventions"})
    public static XSingleComponentFactory __getComponentFactory(String implementation) {
        if (implementation.equals(CellFunctions.class.getName())) {
            return Factory.createComponentFactory(CellFunctions.class, CellFunctions.SERVICES);
        }
        if (implementation.equals(Menu.class.getName())) {
            return Factory.createComponentFactory(Menu.class, Menu.SERVICES);
        }
        return null;
    }
}
