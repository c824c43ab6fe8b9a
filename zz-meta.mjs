import { build } from 'esbuild';
import { gzipSync } from 'node:zlib';
const w = process.argv[2];
const r = await build({ entryPoints:[`src/widgets/${w}/${process.argv[3]??'View'}.tsx`], bundle:true, splitting:true, format:'esm', outdir:'/tmp/meta', minify:true, metafile:true, write:false, jsx:'automatic', jsxImportSource:'preact', define:{'import.meta.env':'{}'}, loader:{'.css':'empty'} });
const out = Object.entries(r.metafile.outputs).find(([,o])=>o.entryPoint);
// entry + static imports
const seen=new Set(); const q=[out[0]]; const tot={};
while(q.length){const n=q.pop(); if(seen.has(n))continue; seen.add(n); const o=r.metafile.outputs[n]; for(const [f,i] of Object.entries(o.inputs)) tot[f]=(tot[f]??0)+i.bytesInOutput; for(const i of o.imports) if(i.kind==='import-statement') q.push(i.path);}
let gz=0; for (const f of r.outputFiles){ for(const n of seen) if(f.path.endsWith(n.replace(/^.*\//,''))) gz+=gzipSync(f.contents).length; }
const rows=Object.entries(tot).sort((a,b)=>b[1]-a[1]);
console.log('total', rows.reduce((s,r)=>s+r[1],0), 'gz', gz);
const g={}; for(const [f,b] of rows){const k=f.replace('node_modules/','nm/').split('/').slice(0,3).join('/'); g[k]=(g[k]??0)+b;}
console.log(Object.entries(g).sort((a,b)=>b[1]-a[1]).slice(0,30).map(([k,b])=>b+' '+k).join('\n'));
console.log('--'); console.log(rows.slice(0,+process.argv[4]||45).map(([k,b])=>b+' '+k).join('\n'));
