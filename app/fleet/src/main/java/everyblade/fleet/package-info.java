/**
 * A shop's store on PostgreSQL: the same lines as in job folders, byte for byte, brought there and back, and questions over
 * all of them. Nothing here shows anything to people; what is refused is a {@link everyblade.fleet.StoreRefusal}.
 */
package everyblade.fleet;
