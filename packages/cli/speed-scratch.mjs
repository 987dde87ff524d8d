import {readFileSync} from 'node:fs';
import {towFit} from '@tarebook/rules';
import {programAtHand,sweeping} from '@tarebook/sweep/many';
import {readCatalogue} from '@tarebook/sweep';
import wabt from 'wabt';
const w=await wabt(); const assemble=t=>{const m=w.parseWat('x.wat',t,{simd:true});const b=m.toBinary({}).buffer;m.destroy();return b};
const c=readCatalogue({'vehicles.csv':readFileSync('/tmp/lotz/e6/vehicles.csv','utf8'),'trailers.csv':readFileSync('/tmp/lotz/e6/trailers.csv','utf8')});
const program=await programAtHand(towFit);
const load = { 'load.occupants': [{ weight: '180 lb' }, { weight: '150 lb' }], 'trailer.cargo': [{ label: 'A weekend', weight: '300 lb' }] };
for (const room of [false,true]) for (const a of [undefined,assemble]) {
 const s=sweeping({facts:load,asOf:'2026-11-01',trailers:c.trailers,withRoom:room,program,assemble:a});
 let best=1e9, h; for(let i=0;i<8;i++){const t=performance.now(); const f=s.judge(c.vehicles); const d=performance.now()-t; best=Math.min(best,d); let x=0; for(let j=0;j<f.levels.length;j++){x=(Math.imul(x,31)+f.levels[j]*7+f.bindings[j]*3+(f.leftLo[j]|0))|0} h=x; if(i<2)console.log(i,d.toFixed(0))}
 console.log('room',room,'simd',!!a,'1e6 pairs best ms',best.toFixed(0),'Mpairs/s',(1000/best).toFixed(1),'hash',h);
}
