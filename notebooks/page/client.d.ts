declare module "*?url" {
  const address: string;
  export default address;
}

declare module "*.css";

declare module "*?worker&inline" {
  const Maker: new () => Worker;
  export default Maker;
}
