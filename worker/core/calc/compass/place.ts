/** A place on the Earth: north and east positive, height above the ellipsoid. */
export interface Place {
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM?: number | undefined;
}
