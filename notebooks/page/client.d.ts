declare module "*?url" {
  const address: string;
  export default address;
}

declare module "*.css";
