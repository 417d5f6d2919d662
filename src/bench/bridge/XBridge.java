import com.sun.star.beans.XPropertySet;
import com.sun.star.lib.uno.typeinfo.MethodTypeInfo;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.uno.XInterface;

/** Functions that do nothing, as UNO knows them. */
public interface XBridge extends XInterface {
    TypeInfo[] UNOTYPEINFO = {
        new MethodTypeInfo("empty", 0, TypeInfo.ANY),
        new MethodTypeInfo("emptyindocument", 1, TypeInfo.ANY),
    };

    Object empty(Object reach, Object rise, Object foreaft, Object unit);

    Object emptyindocument(
            XPropertySet document, Object reach, Object rise, Object foreaft, Object unit);
}
