@org.jspecify.annotations.NullMarked
package tideover.app.store;
