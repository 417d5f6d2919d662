import com.sun.star.beans.XPropertySet;
import com.sun.star.lib.uno.typeinfo.MethodTypeInfo;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.uno.XInterface;

/** Functions that do nothing, as UNO knows them. */
public interface XBridge extends XInterface {
    TypeInfo[] UNOTYPEINFO = {
        new MethodTypeInfo("nothing", 0, 0),
        new MethodTypeInfo("numbers", 1, 0),
        new MethodTypeInfo("empty", 2, TypeInfo.ANY),
        new MethodTypeInfo("emptyindocument", 3, TypeInfo.ANY),
    };

    double nothing();

    double numbers(double reach, double rise, double foreaft);

    Object empty(Object reach, Object rise, Object foreaft, Object unit);

    Object emptyindocument(
            XPropertySet document, Object reach, Object rise, Object foreaft, Object unit);
}
